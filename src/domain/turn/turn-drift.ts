import type { PartSpan } from './part-spans';

/**
 * By how much the second half of a turn differed from its first, as a factor: the mix is in it for neither half.
 *
 * Formula: (Σ time / Σ target of the second half) / (the same of the first half), counted parts with a target only; 1 without
 */
export function turnDrift(spans: readonly PartSpan[]): number {
  const clean = spans.filter(({ targetMs, isCounted }) => isCounted && targetMs !== null);
  const half = Math.floor(clean.length / 2);
  const drift = ratio(clean.slice(half)) / ratio(clean.slice(0, half));
  return Number.isFinite(drift) && drift > 0 ? drift : 1;
}

function ratio(spans: readonly PartSpan[]): number {
  const sum = (of: (span: PartSpan) => number) => spans.reduce((total, span) => total + of(span), 0);
  return sum(({ workMs }) => workMs) / sum(({ targetMs }) => targetMs!);
}
