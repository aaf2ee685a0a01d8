import { formatNumber } from '../format-number';
import { spoken } from '../spoken';

const parts = (count: number) => (count === 1 ? '1 part' : `${count} parts`);

/** Words of a turn that is written down afterwards, and of how far a day's taps can be trusted. */
export const enterTurn = spoken('enterTurn', {
  title: 'Enter a turn that nobody tapped',
  open: 'Enter a turn',
  note: 'Its parts and its time count. No time of a single part is known, so none goes into an average or a study.',
  person: 'Whose turn?',
  day: 'Day',
  from: 'From',
  to: 'To',
  part: (place: number) => `Part ${place}`,
  done: (place: number) => `Done, part ${place}`,
  rework: (place: number) => `of these reworked, part ${place}`,
  scrap: (place: number) => `of these scrapped, part ${place}`,
  short: { part: 'Part', done: 'Done', rework: 'Reworked', scrap: 'Scrap' },
  addPart: 'Another part',
  stopped: (reason: string) => `Minutes stopped: ${reason}`,
  stoppedTitle: 'Minutes stopped, where known',
  enter: 'Enter it',
  next: 'Next',
  cancel: 'Cancel',
  choosePart: 'Choose',
  willWrite: 'This will be written:',
  span: (person: string, day: string, from: string, to: string, length: string) =>
    `${person}, ${day}, ${from} to ${to}: ${length}`,
  made: (part: string, done: number, rework: number, scrap: number) =>
    `${done} × ${part}${rework > 0 ? `, ${rework} of them reworked` : ''}${scrap > 0 ? `, ${scrap} of them scrapped` : ''}`,
  stoppedFor: (reason: string, minutes: number) => `${reason}: ${minutes} min`,
  noStops: 'Nothing told of stoppages: what was lost is not known.',
  entered: (day: string) => `The turn is entered on ${day}, and marked as entered later.`,
  meals: (minutes: number) => `${minutes} min of meal break are left out, by the calendar.`,
  doneNote: 'Done is all of them: with the reworked and the scrapped.',
  beside: (from: string, to: string) =>
    `Another turn is on record from ${from} to ${to}. Go on if this one was worked beside it.`,
  faults: {
    inTheWay: (code: string, from: string, to: string) =>
      `${code} already has a turn from ${from} to ${to}, and nobody is in two at once. Nothing was changed.`,
    person: 'A code is needed. Nothing was changed.',
    times:
      'The day and both times are needed, the turn must be over, and a day long at most. Nothing was changed.',
    whichPart: 'Choose which part the number is of. Nothing was changed.',
    parts:
      'At least one part, in whole numbers, and no more reworked and scrapped than done. Nothing was changed.',
    stops: 'Minutes stopped are whole numbers, and no more than the turn is long. Nothing was changed.',
  },

  trust: 'How far the taps go',
  capture: (tapped: number, counted: number, share: number) =>
    `${parts(tapped)} tapped of ${counted} counted by hand: ${formatNumber(share * 100)} %.`,
  partial: 'Partial: the averages speak for a part of the work only.',
  enteredShare: (entered: number, done: number) =>
    `${entered} of ${parts(done)} ${entered === 1 ? 'was entered later, and is' : 'were entered later, and are'} in no average.`,
  learning: (count: number) => `${parts(count)} made while learning, and in no average.`,
  shared: (count: number) => `${parts(count)} shared by two people, and in no person’s own figures.`,
});
