import { recordKey } from '../../domain/records/record-key';
import type { Stamp } from '../../domain/records/stamp';
import type { Bench } from '../bench';

/**
 * From this moment on the operator makes a part good that was done before: work stands still until Go on, and the
 * time is that part's. It counts as reworked, and no more as good the first time.
 *
 * @param partDone key of the part, of this turn or of an earlier one
 */
export function beginRework(bench: Bench, partDone: string, at: Stamp): void {
  const turn = bench.turn.value;
  if (!turn || turn.status === 'ended') return;
  const open = turn.status === 'stopped' ? turn.stoppages.at(-1)?.key : undefined;
  const stoppage = open ?? recordKey(bench.record(turn.id, [{ kind: 'stopped' }], at)[0]!);
  const why = { reason: 'rework', label: '', category: 'rework', ofPart: partDone } as const;
  // A part of an earlier turn was marked there.
  const isOwn = turn.cycles.some(({ key }) => key === partDone);
  bench.record(turn.id, [
    { kind: 'stoppage-explained', stoppage, ...why },
    ...(isOwn ? [{ kind: 'part-judged', partDone, outcome: 'rework', stoppage } as const] : []),
  ]);
}
