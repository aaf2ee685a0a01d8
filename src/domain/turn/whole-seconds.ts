/**
 * The whole seconds of a span: from the second in which it begins to the second in which it ends. Spans
 * without a gap then add up, as printed, to the whole of them; each is within a second of its duration.
 *
 * @example
 * wholeSeconds({ fromMs: 1_600, toMs: 3_200 }) // => 2, from second 1 to second 3
 */
export function wholeSeconds({ fromMs, toMs }: { fromMs: number; toMs: number }): number {
  return Math.floor(toMs / 1_000) - Math.floor(fromMs / 1_000);
}

/**
 * A stretch of a turn as long as every list prints it, milliseconds. Stoppages, lines of the ledger and the elapsed
 * time add up on paper only when all of them are cut in this one way.
 */
export function printedMs(span: { fromMs: number; toMs: number }): number {
  return wholeSeconds(span) * 1_000;
}
