import type { Bench } from '../bench';

/** The turn was another person's. */
export function correctPerson(
  bench: Bench,
  stream: string,
  person: string,
  { by, why }: { by: string; why: string },
): void {
  bench.record(stream, [{ kind: 'person-corrected', person, by, why }]);
}
