import type { LedgerSpan, Turn } from './turn';

/**
 * A stretch in which work stood still: a stop that was tapped, a gap of which somebody said that it was no work, or a
 * stretch that was put right afterwards, where nobody had tapped.
 */
export interface StoodStill {
  /** Of the stopped record, or of the record that the gap is named by; of a stretch that was put right, its own start. */
  readonly key: string;
  readonly is: 'tapped' | 'gap' | 'put-right';
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
    return { key, is: 'tapped', reason, label, fromMs, toMs: toMs ?? lastAtMs };
  });
  const answered = gaps.flatMap(({ key, fromMs, toMs }) =>
    ledger
      .filter((span) => span.fromMs < toMs && span.toMs > fromMs && isStopped(span))
      .map(
        ({ reason, label, ...span }): StoodStill => ({
          key,
          is: 'gap',
          reason,
          label,
          fromMs: Math.max(fromMs, span.fromMs),
          toMs: Math.min(toMs, span.toMs),
        }),
      ),
  );
  const isNamed = (span: LedgerSpan) =>
    [...tapped, ...answered].some(({ fromMs, toMs }) => fromMs < span.toMs && toMs > span.fromMs);
  const putRight = ledger
    .filter((span) => isStopped(span) && !isNamed(span))
    .map(({ reason, label, fromMs, toMs }): StoodStill => {
      return { key: `${fromMs}`, is: 'put-right', reason, label, fromMs, toMs };
    });
  return [...tapped, ...answered, ...putRight].sort((a, b) => a.fromMs - b.fromMs);
}

function isStopped({ category }: LedgerSpan): boolean {
  return category !== 'cycle' && category !== 'unaccounted';
}
