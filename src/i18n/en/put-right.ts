import { spoken } from '../spoken';

/** What is acted on, as the object of a sentence. */
const them = (count: number) => (count === 1 ? 'the part' : `${count} parts`);

/** Words of what a person puts right without being asked. */
export const putRight = spoken('putRight', {
  title: 'Put something else right',
  note: 'Nothing is deleted, and all of it can be taken back: what is put right stands beside what was recorded, with who and why.',
  turn: 'Which turn?',
  turnLine: (from: string, parts: number) => `${from}, ${parts} ${parts === 1 ? 'part' : 'parts'}`,

  whats: {
    parts: 'Parts',
    person: 'Person',
    time: 'A stop or a stretch of time',
    count: 'Count written down beside the taps',
    away: 'Take this turn away',
    back: 'Take one back',
  },
  fromPart: 'From part',
  toPart: 'to part',
  howMany: (count: number) => (count === 1 ? 'This part:' : `These ${count} parts:`),
  mark: (count: number, as: string) => `Mark ${them(count)}: ${as}`,
  good: 'Good',
  rework: 'Reworked',
  scrap: 'Scrap',
  wasTwo: 'It was two parts',
  wasNone: 'It was no part',
  setAside: 'Leave out of averages',
  setAsideAll: (count: number) => `Leave ${them(count)} out of averages`,
  takeBack: 'Back into averages',
  takeBackAll: (count: number) => `Put ${them(count)} back into averages`,
  changeTo: (code: string) => `Change to ${code}`,
  changeAll: (count: number, code: string) => `Change ${them(count)} to ${code}`,
  putAs: (from: string, to: string, long: string, what: string) =>
    `Put ${from} to ${to} (${long}) under ${what}`,
  onRecord: (code: string) => `${code} ✓ on record`,
  awayNote: 'The turn and its parts count no more; all of it stays in the log.',
  taken: 'The turn is taken away.',

  stop: 'Which stop?',
  noneBack: 'Nothing yet.',
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
