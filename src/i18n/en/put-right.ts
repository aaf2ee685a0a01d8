import { roundedClockFace } from '../rounded-clock-face';

/** Words of what a person puts right without being asked. */
export const putRight = {
  title: 'Put something else right',
  note: 'Nothing is deleted: what was recorded stays, and what is put right stands beside it with who and why.',
  turn: 'Which turn?',
  /** Whose turn it was is not shown. */
  turnLine: (from: string, parts: number) => `${from}, ${parts} ${parts === 1 ? 'part' : 'parts'}`,

  whats: { parts: 'Parts', time: 'A stretch of time', count: 'Parts counted' },
  fromPart: 'From part',
  toPart: 'to part',
  partLine: (at: string, code: string, ms: number) => `${at} · ${code} · ${roundedClockFace(ms)}`,
  howMany: (count: number) => (count === 1 ? 'This part …' : `These ${count} parts …`),
  isGood: 'is good',
  isRework: 'was reworked',
  isScrap: 'is scrap',
  setAside: 'goes into no average',
  takeBack: 'goes back into the average',
  itWas: (code: string) => `is ${code}`,

  from: 'From',
  to: 'To',
  was: 'It was …',
  work: 'Work on parts',
  whose: 'Who was there?',
  missing: 'Give both times, one after the other and inside the turn. Nothing was changed.',
  counted: 'Parts counted by hand',
  keepCount: 'Keep the count',
  countNote: (tapped: number) => `${tapped} were tapped.`,
  said: 'It is put right.',
} as const;
