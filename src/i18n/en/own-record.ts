import { formatNumber } from '../format-number';

/** Words of the operator's own record, read when a turn has ended. */
export const ownRecord = {
  ownTitle: 'Your own record',
  ownWhen: (person: string, day: string, from: string, to: string) => `${person} · ${day}, ${from} to ${to}`,
  ownNote: 'You see it first. It is for improving and planning, not for pay or discipline.',
  startAnother: 'Start another turn',
  whose: 'Whose parts?',
  shared: (count: number) =>
    `${count === 1 ? 'One part was' : `${count} parts were`} shared by two, and in neither’s own figures.`,
  byPart: 'Parts',
  noParts: 'No part was done in this turn.',
  column: {
    part: 'Part',
    n: 'Done',
    mean: 'Average',
    target: 'Target',
    good: 'Good first time',
    rework: 'Reworked',
    scrap: 'Scrap',
    what: 'Time',
    duration: 'min:s',
    share: 'Share',
    when: 'At',
    why: 'Why',
  },
  targetChanged: 'last of several',
  netNote: 'Averages leave stoppages out, and parts about which a question is open.',
  countedOf: (counted: number) => `(${counted} counted)`,
  share: (part: number) => `${formatNumber(part * 100)} %`,
  stoppagesTitle: 'Stoppages',
  noStoppages: 'Work was not stopped.',
  noteTitle: 'Anything to say about this turn?',
  noteHint: 'Whoever looks at the day reads it beside the figures.',
  noteKept: 'Kept with your record.',
  sayWhyShort: 'Say why',
  change: 'Change',
} as const;
