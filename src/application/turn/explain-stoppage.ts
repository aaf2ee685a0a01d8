import type { StopReason } from '../../domain/records/shop-fact';
import type { Bench } from '../bench';

/**
 * Says why work stood still. A second explanation replaces the first; both stay in the log.
 *
 * @param told who says so afterwards, and why where another reason stood there; left out at the station
 */
export function explainStoppage(
  bench: Bench,
  turn: string,
  stoppage: string,
  reason: StopReason,
  told?: { readonly by: string; readonly why: string },
): void {
  const { id, label, category } = reason;
  const said = told ? { by: told.by, ...(told.why && { why: told.why }) } : {};
  bench.record(turn, [{ kind: 'stoppage-explained', stoppage, reason: id, label, category, ...said }]);
}
