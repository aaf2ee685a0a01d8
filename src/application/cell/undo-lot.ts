import type { CellLots } from '../../domain/cell/fold-lots';
import type { Bench } from '../bench';

/** Takes the last coming or going of a lot back; it stays in the log. */
export function undoLot(bench: Bench, { last }: CellLots): void {
  if (last) bench.record(last.stream, [{ kind: 'undone', of: last.key }]);
}
