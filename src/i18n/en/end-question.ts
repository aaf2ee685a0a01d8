import { clockFace } from '../format-duration';

/** Words of the question at the end of a turn. */
export const endQuestion = {
  endTitle: 'End this turn?',
  endText: (count: number, ms: number) =>
    `${count === 1 ? '1 part' : `${count} parts`} done. The part in hand, ${clockFace(ms)} so far, will not be counted.`,
  endYes: 'End the turn',
  endNo: 'Keep working',
} as const;
