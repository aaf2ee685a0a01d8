import type { Doubt } from './doubt';
import type { PersonSpan } from './people-line';

/**
 * Somebody has said who came back after a long time away: another person begins in it, or between its end and
 * the next part done.
 */
export function isPersonSaid(
  { fromMs, toMs }: Pick<Doubt, 'fromMs' | 'toMs'>,
  people: readonly PersonSpan[],
  parts: readonly { readonly toMs: number }[],
): boolean {
  const nextMs = parts.find((part) => part.toMs > toMs)?.toMs ?? Number.POSITIVE_INFINITY;
  return people.some((span) => span.fromMs > fromMs && span.fromMs < nextMs);
}
