import { clockFace } from '../format-duration';
import { spoken } from '../spoken';

/** Words of the question at the end of a turn. */
export const endQuestion = spoken('endQuestion', {
  endTitle: 'End this turn?',
  endText: (count: number, ms: number) =>
    `${count === 1 ? '1 part' : `${count} parts`} done. The part in hand, ${clockFace(ms)} so far, will not be counted.`,
  toRework: (count: number) =>
    `${count} ${count === 1 ? 'part waits' : 'parts wait'} to be reworked: in any turn here, under “Previous part”.`,
  endYes: 'End the turn',
  endNo: 'Keep working',
  handOver: 'Or somebody else goes on',
  goesOn: (code: string, ms: number) => `${code} goes on, with the ${clockFace(ms)} that this part has taken`,
  handOverNote: 'The part in hand is shared by the two, and in neither’s own average.',
});
