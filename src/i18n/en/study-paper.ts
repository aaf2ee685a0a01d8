import { spoken } from '../spoken';
/** Words for typing in a study that was timed on paper. */
export const studyPaper = spoken('studyPaper', {
  title: 'Type in a paper study',
  intro: 'Cycle by cycle, element by element, as it stands on the sheet. The method must be in the shop.',
  noMethod: 'No part has a method yet. Write one under New study first.',
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
  missing: 'Choose a part and give the study a name.',
  cycle: (cycle: number) => `Cycle ${cycle}`,
  value: 'Time',
  rating: 'Rating',
  missed: 'Not seen',
  because: 'Left out because',
  none: 'It is used',
  next: 'Next',
  nextIs: (element: string) => `then ${element}`,
  back: 'Back one',
  erase: 'Erase the last digit',
  keep: 'Keep this study',
  stop: 'Back',
  faults: {
    nothing: () => 'Nothing was typed yet.',
    'watch-backwards': (element: string, cycle: number) =>
      `${element}, cycle ${cycle}: the watch stands before the break point in front of it.`,
    'machine-rated': (element: string, cycle: number) =>
      `${element}, cycle ${cycle}: a machine is never rated; its rating is 100.`,
  },
  source: 'typed from paper',
  notNumber: 'A time is a number, such as 0.45.',
});
