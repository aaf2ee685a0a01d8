import type { BeforeChange } from '../../domain/records/turn-fact';
import type { Bench } from '../bench';

/** Says what the time before a change of part was. A second answer replaces the first; both stay in the log. */
export function explainChange(
  bench: Bench,
  stream: string,
  change: string,
  as: BeforeChange,
  by?: string,
): void {
  bench.record(stream, [{ kind: 'change-explained', change, as, ...(by ? { by } : {}) }]);
}
