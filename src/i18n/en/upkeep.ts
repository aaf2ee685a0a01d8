import { formatNumber } from '../format-number';

/** Words of the frame about how the records fare. */
export const upkeepWords = {
  copy: (age: string) => `Last copy outside: ${age}`,
  noCopy: 'No copy outside yet',
  broken: 'A record is damaged: see Records',
  coarse: (ms: number) => `This browser’s clock steps by ${formatNumber(ms)} ms`,
  collapsed: 'Records are missing: see Records',
};
