import type { Bench } from '../bench';

/**
 * The turn, or a stretch of it, was another person's. Times in milliseconds since the turn began; a stretch without
 * an end goes on to the end of the turn.
 *
 * @throws {RangeError} correctPerson requires a stretch that begins in the turn and ends after it begins
 */
export function correctPerson(
  bench: Bench,
  stream: string,
  person: string,
  { by, why }: { by: string; why: string },
  stretch: { readonly fromMs: number; readonly toMs?: number } | null = null,
): void {
  const { fromMs = 0, toMs = Number.POSITIVE_INFINITY } = stretch ?? {};
  if (!(fromMs >= 0 && toMs > fromMs)) {
    throw new RangeError('correctPerson requires a stretch that begins in the turn and ends after it begins');
  }
  bench.record(stream, [{ kind: 'person-corrected', person, ...stretch, by, why }]);
}
