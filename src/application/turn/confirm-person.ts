import type { Bench } from '../bench';

/** After a long gap it was the same person as before. */
export function confirmPerson(bench: Bench, stream: string, gap: string, by?: string): void {
  bench.record(stream, [{ kind: 'person-confirmed', gap, ...(by ? { by } : {}) }]);
}
