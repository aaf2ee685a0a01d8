import { groupBy } from '../domain/group-by';
import type { LogRecord } from '../domain/records/log-record';
import { foldAnyTurn } from '../domain/turn/fold-any-turn';
import type { DemoLog } from './demo-log';
import { SHIFT_END } from './shift-plan';

/**
 * Answers what the taps leave open, as the shop's foreman did at the end of the month: a long cycle was one part
 * with a trolley exchanged or a chip tray emptied in it, and every part was the one that was chosen.
 */
export function settleDoubts(log: DemoLog, lastDay: number): void {
  const at = { day: lastDay, minute: SHIFT_END };
  for (const [stream, records] of groupBy([...log.records], (record: LogRecord) => record.stream)) {
    if (records[0]?.fact.kind !== 'turn-started') continue;
    for (const { kind, key } of foldAnyTurn(records).doubts) {
      if (kind === 'two-parts')
        log.append(stream, at, { kind: 'cycle-judged', partDone: key, as: 'one-part' });
      if (kind === 'another-part') log.append(stream, at, { kind: 'part-confirmed', partDone: key });
    }
  }
}
