import type { LedgerSpan, Turn } from './turn';

/** A stretch in which work stood still: a stop that was tapped, or a gap of which somebody said that it was no work. */
export interface StoodStill {
  /** Of the stopped record, or of the record that the gap is named by. */
  readonly key: string;
  readonly isGap: boolean;
  readonly reason: string;
  readonly label: string;
  readonly fromMs: number;
  readonly toMs: number;
}

/**
 * Every stretch of a turn in which work stood still, in order of time, so that a list of them can add up to what the
 * ledger has. A gap that was work, or of which nobody said anything, is none. Milliseconds since the turn began.
 */
export function stoodStill({ stoppages, gaps, ledger, lastAtMs }: Turn): StoodStill[] {
  const tapped = stoppages.map(({ key, reason, label, fromMs, toMs }): StoodStill => {
    return { key, isGap: false, reason, label, fromMs, toMs: toMs ?? lastAtMs };
  });
  const answered = gaps.flatMap(({ key, fromMs, toMs }) =>
    ledger
      .filter((span) => span.fromMs < toMs && span.toMs > fromMs && isStopped(span))
      .map(
        ({ reason, label, ...span }): StoodStill => ({
          key,
          isGap: true,
          reason,
          label,
          fromMs: Math.max(fromMs, span.fromMs),
          toMs: Math.min(toMs, span.toMs),
        }),
      ),
  );
  return [...tapped, ...answered].sort((a, b) => a.fromMs - b.fromMs);
}

function isStopped({ category }: LedgerSpan): boolean {
  return category !== 'cycle' && category !== 'unaccounted';
}
