/** From where to where in a turn, milliseconds since it began. */
interface Placed {
  readonly fromMs: number;
  readonly toMs: number;
}

/**
 * Gapless spans in which one stretch stands otherwise: spans are split where it begins and ends, and every
 * millisecond stays where it is.
 */
export function layOver<Span extends Placed>(spans: readonly Span[], over: Span): Span[] {
  return spans.flatMap((span) => {
    const fromMs = Math.max(span.fromMs, over.fromMs);
    const toMs = Math.min(span.toMs, over.toMs);
    if (fromMs >= toMs) return [span];
    const pieces = [
      { ...span, toMs: fromMs },
      { ...over, fromMs, toMs },
      { ...span, fromMs: toMs },
    ];
    return pieces.filter((piece) => piece.toMs > piece.fromMs);
  });
}
