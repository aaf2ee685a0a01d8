import { clockFace } from '../format-duration';
import { roundedClockFace } from '../rounded-clock-face';
import { spoken } from '../spoken';

/** Words of the questions beside the figures, and of those that take their place. */
export const turnQuestion = spoken('turnQuestion', {
  outcomeTitle: (ms: number) => `Previous part, ${roundedClockFace(ms)}: how is it?`,
  undoTitle: (what: string, ms: number) => `Take back ${what}, ${clockFace(ms)} ago?`,
  undoYes: 'Take it back',
  undoNo: 'Leave it',
  undoNote: 'The tap stays in the records, and so does that it was taken back.',
  firstOff: 'First-off piece: set-up',
  reasonTitle: 'Why, if you want to say',
  reasonTitleAfter: (ms: number) => `Stopped ${clockFace(ms)}: why?`,
  gapTitle: (ms: number) => `Not work for ${roundedClockFace(ms)}: what was it?`,
  sayWhy: (ms: number) => `Stopped ${clockFace(ms)} – say why`,
  saidWhy: (ms: number, why: string) => `Stopped ${clockFace(ms)}: ${why}`,
  sayWhat: (ms: number, to: string) => `${roundedClockFace(ms)} before ${to} – what was it?`,
  openCount: (count: number) => `${count} open, the newest first:`,
  answered: (word: string, left: number) =>
    left === 0 ? `Answered: ${word}` : `Answered: ${word}. ${left} more asked`,
});
