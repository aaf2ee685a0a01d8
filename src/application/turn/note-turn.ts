import type { Bench } from '../bench';

/** The operator's own words about a turn. Nothing is recorded when they are the ones that stand. */
export function noteTurn(
  bench: Bench,
  { id, note: standing }: { id: string; note: string },
  note: string,
): void {
  const words = note.trim();
  if (words !== standing) bench.record(id, [{ kind: 'turn-noted', note: words }]);
}
