import { clockFace } from '../format-duration';
import { roundedClockFace } from '../rounded-clock-face';
import { spoken } from '../spoken';

/** Words of the questions beside the figures, and of those that take their place. */
export const turnQuestion = spoken('turnQuestion', {
  outcomeTitle: (ms: number) => `Previous part, ${roundedClockFace(ms)}: how is it?`,
  undoTitle: (what: string, ms: number) => `Take back ${what}, ${clockFace(ms)} ago?`,
  undoYes: 'Take it back',
  undoNo: 'Leave it',
  undoNote: 'Tap and undo both stay in the records.',
  stopInIt: 'A stop was in it',
  stopInItSaid: 'A stop was in it: in no average',
  allWorkSaid: 'All of it was work',
  firstOff: 'First-off piece: set-up',
  scrapSaid: 'Scrap: earns no target',
  reworkSaid: 'To rework: it waits under “Previous part”',
  reworkNow: 'Rework now',
  reworkLater: 'Rework later',
  reworkBegun: 'Rework begun: tap when it is good',
  waitingPart: (code: string, at: string, ms: number) => `Rework ${code} of ${at}, ${roundedClockFace(ms)}`,
  reworking: (code: string, at: string) => `Rework of ${code}, done at ${at}`,
  reworkingNote: 'It stays one part. This time is its rework and in no average.',
  reworkFailed: 'It is scrap after all',
  tally: (scrap: number, marked: number, waiting: number, shared: number) =>
    [
      scrap > 0 && `${scrap} scrap`,
      waiting > 0 && `${waiting} to rework`,
      marked > waiting && `${marked - waiting} reworked`,
      shared > 0 && `${shared} shared`,
    ]
      .filter(Boolean)
      .join(' · '),
  changedTo: (code: string, soFarMs: number) =>
    soFarMs < 1_000 ? `${code} from now on` : `${code} from now on, with the ${clockFace(soFarMs)} so far`,
  reasonTitle: 'Why, if you want to say',
  reasonTitleAfter: (ms: number) => `Stopped ${clockFace(ms)}: why?`,
  gapTitle: (ms: number) => `Not work for ${roundedClockFace(ms)}: what was it?`,
  sayWhy: (ms: number) => `Stopped ${clockFace(ms)} – say why`,
  saidWhy: (ms: number, why: string) => `${why}: ${clockFace(ms)}`,
  sayWhat: (ms: number, to: string) => `${roundedClockFace(ms)} before ${to} – what was it?`,
  isNext: 'That is the next question: read it first',
  answered: (word: string, left: number) =>
    left === 0 ? `Answered: ${word}` : `Answered: ${word}. ${left} more asked`,
});
