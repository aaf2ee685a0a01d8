import type { Doubt } from './doubt';
import type { Turn } from './turn';

/** Code of the part that an open question is about: the one done then, or the one in hand. */
export function partOfDoubt({ cycles, inHand }: Turn, { kind, key, fromMs }: Doubt): string {
  const isIts = (cycle: Turn['cycles'][number]) =>
    // A second tap lies behind the part it may belong to.
    cycle.key === key || (kind === 'second-tap' ? cycle.toMs >= fromMs : cycle.toMs > fromMs);
  return (cycles.find(isIts) ?? inHand).partCode;
}
