import type { Doubt } from './doubt';
import { netTimes } from './net-times';
import type { PartTapped } from './part-tapped';
import type { PlannedShift } from './planned-shift';
import type { LedgerSpan } from './turn';

/** Of a break: a part that has less of it inside was finished a little late, or begun a little early. */
const LEAST_SHARE = 0.5;

/**
 * The planned breaks that lie in a part though nobody tapped: was the break taken? The calendar is a default, so a
 * tap goes before it. Where the operator tapped in the break, or stopped for any reason, or somebody has put the
 * time elsewhere, there is nothing to ask.
 *
 * @param ledger with all that was reclassified
 * @param worked breaks through which somebody said that work went on, by the name of `breakName`
 */
export function spannedBreaks(
  ledger: readonly LedgerSpan[],
  parts: readonly PartTapped[],
  { breaks }: PlannedShift,
  worked: ReadonlySet<string>,
): Extract<Doubt, { kind: 'planned-break' }>[] {
  if (breaks.length === 0) return [];
  return parts.flatMap(({ key, touchMs, fromMs: beganMs, toMs: doneMs }) =>
    breaks.flatMap((planned) => {
      const fromMs = Math.max(planned.fromMs, beganMs);
      const toMs = Math.min(planned.toMs, doneMs);
      if (touchMs !== null || toMs - fromMs < LEAST_SHARE * (planned.toMs - planned.fromMs)) return [];
      if (worked.has(breakName(key, fromMs))) return [];
      const isAllWork = netTimes(ledger, [{ fromMs, toMs }])[0] === toMs - fromMs;
      return isAllWork
        ? { kind: 'planned-break' as const, key, fromMs, toMs, suggestion: 'break' as const }
        : [];
    }),
  );
}

/** Names a break inside a part: a long part may have two. */
export function breakName(partDone: string, fromMs: number): string {
  return `${partDone} ${fromMs}`;
}
