import { later } from '../records/later';
import type { LogRecord } from '../records/log-record';
import { recordKey } from '../records/record-key';
import type { EnteredLater, EnteredLine } from '../records/station-fact';
import type { PartTapped } from './part-tapped';
import { type PersonSpan, whose } from './people-line';
import type { LedgerSpan } from './turn';

/**
 * What stands in for taps in a turn that was written down afterwards. A meal of the calendar lies where it lay, also
 * where the work was over before it; nobody knows when parts were done or stoppages began, so work comes first, shared
 * among all parts alike, and what else stood still after it: only the sums mean anything.
 */
export function enteredTurn(
  start: LogRecord,
  { lastedMs, lines, stops }: EnteredLater,
  people: readonly PersonSpan[],
): { parts: PartTapped[]; ledger: LedgerSpan[] } {
  const stoppedMs = stops.reduce((sum, { lostMs }) => sum + lostMs, 0);
  const workedMs = Math.max(0, lastedMs - stoppedMs);
  const count = lines.reduce((sum, { done }) => sum + done, 0);
  const ledger: LedgerSpan[] = [];
  const add = (category: LedgerSpan['category'], reason: string, label: string, ms: number) => {
    const fromMs = ledger.at(-1)?.toMs ?? 0;
    const toMs = Math.min(lastedMs, fromMs + ms);
    if (toMs > fromMs) ledger.push({ category, reason, label, fromMs, toMs });
  };
  const placed = stops.flatMap((stop) =>
    stop.fromMs === undefined ? [] : [{ ...stop, fromMs: stop.fromMs }],
  );
  placed.sort((a, b) => a.fromMs - b.fromMs);
  const line = [
    { category: count > 0 ? 'cycle' : 'unaccounted', reason: '', label: '', lostMs: workedMs } as const,
    ...stops.filter(({ fromMs }) => fromMs === undefined),
  ].map((each) => ({ ...each, leftMs: each.lostMs }));
  const fillUntil = (endMs: number) => {
    for (const each of line) {
      const ms = Math.min(each.leftMs, Math.max(0, endMs - (ledger.at(-1)?.toMs ?? 0)));
      add(each.category, each.reason, each.label, ms);
      each.leftMs -= ms;
    }
  };
  for (const { category, reason, label, lostMs, fromMs } of placed) {
    fillUntil(fromMs);
    add(category, reason, label, lostMs);
  }
  fillUntil(lastedMs);
  /** Where so much work was done: what lies before it in the turn is work, and the meals in between. */
  const after = (ms: number) => {
    let atMs = ms;
    for (const { fromMs, lostMs } of placed) if (atMs > fromMs) atMs += lostMs;
    return Math.min(atMs, lastedMs);
  };

  const parts = lines.flatMap(eachOf).map(({ outcome, ...part }, place): PartTapped => {
    const fromMs = after(Math.floor((workedMs * place) / count));
    const toMs = after(Math.floor((workedMs * (place + 1)) / count));
    return {
      key: `${recordKey(start)}/${place + 1}`,
      ...part,
      partsPerTap: 1,
      doneAt: later(start.stamp, toMs),
      ...whose(people, { fromMs, toMs }),
      fromMs,
      toMs,
      touchMs: null,
      outcome,
      defect: '',
      steps: [],
      isUnbroken: false,
      hasOpenGap: false,
      isEntered: true,
    };
  });
  return { parts, ledger };
}

function eachOf(line: EnteredLine) {
  const { part, partCode, targetMs } = line;
  return Array.from({ length: line.done }, (_each, place) => ({
    part,
    partCode,
    targetMs,
    outcome:
      place < line.scrap
        ? ('scrap' as const)
        : place < line.scrap + line.rework
          ? ('rework' as const)
          : ('good' as const),
  }));
}
