import type { Turn } from '../turn/turn';

/** A stretch of the wall clock in which the cell worked, milliseconds. */
export interface WorkingSpan {
  readonly fromWallMs: number;
  readonly toWallMs: number;
}

/** When the cell worked: its turns, without their planned breaks. In order and without overlap. */
export function workingSpans(turns: readonly Turn[]): WorkingSpan[] {
  const spans = turns
    .flatMap(({ startedAt, ledger }) =>
      ledger
        .filter(({ category, fromMs, toMs }) => category !== 'planned-break' && toMs > fromMs)
        .map(({ fromMs, toMs }) => ({
          fromWallMs: startedAt.wallMs + fromMs,
          toWallMs: startedAt.wallMs + toMs,
        })),
    )
    .sort((a, b) => a.fromWallMs - b.fromWallMs);
  const joined: { fromWallMs: number; toWallMs: number }[] = [];
  for (const span of spans) {
    const before = joined.at(-1);
    if (before && span.fromWallMs <= before.toWallMs) {
      before.toWallMs = Math.max(before.toWallMs, span.toWallMs);
    } else joined.push({ ...span });
  }
  return joined;
}

/** Turns a moment of the wall clock into working milliseconds since the first span: only differences mean anything. */
export function workingClock(spans: readonly WorkingSpan[]): (wallMs: number) => number {
  const before: number[] = [];
  let sum = 0;
  for (const { fromWallMs, toWallMs } of spans) {
    before.push(sum);
    sum += toWallMs - fromWallMs;
  }
  return (wallMs) => {
    let [low, high] = [0, spans.length];
    while (low < high) {
      const middle = (low + high) >> 1;
      if (spans[middle]!.fromWallMs <= wallMs) low = middle + 1;
      else high = middle;
    }
    const own = spans[low - 1];
    if (!own) return 0;
    return before[low - 1]! + Math.min(wallMs, own.toWallMs) - own.fromWallMs;
  };
}
