import { formatNumber } from '../format-number';
import { spoken } from '../spoken';

/** Words of the frame about how the records fare. */
export const upkeepWords = spoken('upkeepWords', {
  copy: (age: string) => `Last copy outside: ${age}`,
  noCopy: 'No copy outside yet',
  broken: 'A record is damaged: see Records',
  coarse: (ms: number) => `This browser’s clock steps by ${formatNumber(ms)} ms`,
  collapsed: 'Records are missing: see Records',
});
