import { spoken } from '../spoken';
/** Words for typing in a study that was timed on paper. */
export const studyPaper = spoken('studyPaper', {
  title: 'Type in a paper study',
  intro: 'Cycle by cycle, element by element, as it stands on the sheet. The part needs a method.',
  noMethod: 'No part has a method yet. Write one first.',
  writeMethod: 'Write a method',
  name: 'Name of the study',
  day: 'Day',
  unit: 'Times on the sheet',
  reads: 'They are',
  readings: {
    own: 'each element’s own time',
    watch: 'the running watch',
    cycle: 'the watch, from zero each cycle',
  },
  begin: 'Begin typing',
  missing: 'Choose a part, and give the study a name and its day.',
  cycle: (cycle: number) => `Cycle ${cycle}`,
  value: 'Time',
  rating: 'Rating',
  missed: 'Not seen',
  because: 'Left out because',
  none: 'It is used',
  next: 'Next',
  nextIs: (element: string) => `then ${element}`,
  back: 'Cell before',
  erase: 'Erase the last digit',
  keep: 'Keep this study',
  stop: 'To the head of the sheet',
  faults: {
    nothing: () => 'Nothing was typed yet.',
    'watch-backwards': (element: string, cycle: number, watch: string, before: string) =>
      `${element}, cycle ${cycle}: ${watch} is earlier than ${before}.`,
    'machine-rated': (element: string, cycle: number) =>
      `${element}, cycle ${cycle}: a machine is never rated; its rating is 100.`,
    'no-rating': (element: string, cycle: number) =>
      `${element}, cycle ${cycle}: a rating is a number above 0, at most 200.`,
  },
  questions: {
    cell: (element: string, cycle: number) => `${element} (cycle ${cycle})`,
    gaps: (cells: string) =>
      `Nothing was typed for ${cells}. Kept like this they are break points not seen, and their cycles are not whole.`,
    never: (elements: string) =>
      `The sheet has no time of ${elements}. The sums will leave it out and say so.`,
    rated: (cell: string, rating: string) => `${cell} with ${rating}`,
    odd: (cells: string) => `Rated outside 50 to 150: ${cells}. Is that what the sheet says?`,
    unrated: (elements: string) => `No rating was typed for ${elements}. Kept like this it counts as 100.`,
    goOn: 'Go on typing',
    keepSo: 'Keep it as it is',
  },
  source: 'typed from paper',
  notNumber: 'A time is a number, such as 0.45.',
});
