import type { StopReason } from '../../domain/records/shop-fact';
import type { Bench } from '../bench';

/** Says why work stood still. A second explanation replaces the first; both stay in the log. */
export function explainStoppage(bench: Bench, turn: string, stoppage: string, reason: StopReason): void {
  const { id, label, category } = reason;
  bench.record(turn, [{ kind: 'stoppage-explained', stoppage, reason: id, label, category }]);
}
