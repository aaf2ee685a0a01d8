import { roundedClockFace } from '../rounded-clock-face';
import { spoken } from '../spoken';

/** Words of what a person puts right without being asked. */
export const putRight = spoken('putRight', {
  title: 'Put something else right',
  note: 'Nothing is deleted: what was recorded stays, and what is put right stands beside it with who, and why unless it says so itself.',
  turn: 'Which turn?',
  /** Whose turn it was is not shown. */
  turnLine: (from: string, parts: number) => `${from}, ${parts} ${parts === 1 ? 'part' : 'parts'}`,

  whats: {
    parts: 'Parts',
    person: 'Person',
    time: 'A stretch of time',
    count: 'Count written down beside the taps',
    away: 'Take this turn away',
  },
  fromPart: 'From part',
  toPart: 'to part',
  partLine: (at: string, code: string, ms: number) => `${at} · ${code} · ${roundedClockFace(ms)}`,
  howMany: (count: number) => (count === 1 ? 'This part:' : `These ${count} parts:`),
  mark: (count: number, as: string) => `Mark ${count === 1 ? 'the part' : `${count} parts`}: ${as}`,
  good: 'Good',
  rework: 'Reworked',
  scrap: 'Scrap',
  wasTwo: 'It was two parts',
  wasNone: 'It was no part',
  setAside: 'Leave out of averages',
  setAsideAll: (count: number) => `Leave ${count === 1 ? 'the part' : `${count} parts`} out of averages`,
  takeBack: 'Back into averages',
  takeBackAll: (count: number) => `Put ${count === 1 ? 'the part' : `${count} parts`} back into averages`,
  changeTo: (code: string) => `Change to ${code}`,
  changeAll: (count: number, code: string) =>
    `Change ${count === 1 ? 'the part' : `${count} parts`} to ${code}`,
  putAs: (from: string, to: string, what: string) => `Put ${from} to ${to} under ${what}`,
  giveTo: (from: string, to: string, code: string) => `Put ${from} to ${to} under ${code}`,
  onRecord: (code: string) => `${code} ✓ on record`,
  awayNote:
    'The turn and its parts count no more. It stays in the log, with who entered it and who took it away.',
  taken: 'The turn is taken away.',

  from: 'From',
  to: 'To',
  was: 'It was …',
  work: 'Work on parts',
  whose: 'Who was there in that time?',
  missing: 'Give both times, one after the other and inside the turn. Nothing was changed.',
  counted: 'Parts counted by hand',
  keepCount: 'Keep the count',
  countNote: (tapped: number) =>
    `${tapped} ${tapped === 1 ? 'was' : 'were'} tapped. The count stays beside them and makes no part: where a tap was missed, say under Parts which one was two.`,
  countKept: 'The count is kept beside the taps.',
  said: (what: string) => `Put right: ${what}.`,
});
