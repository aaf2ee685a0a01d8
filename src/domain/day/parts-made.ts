/** A day, in full or in sums. */
interface DayWithParts {
  readonly day: string;
  readonly parts: readonly { readonly part: string; readonly partCode: string; readonly n: number }[];
}

/** A part that was made in some days, with its newest code. */
export interface PartMade {
  readonly part: string;
  readonly partCode: string;
  readonly done: number;
}

/** The parts made in some days, in the order of their codes. */
export function partsMade(reviews: readonly DayWithParts[]): PartMade[] {
  const made = new Map<string, PartMade>();
  for (const { parts } of [...reviews].sort((a, b) => (a.day < b.day ? -1 : 1))) {
    for (const { part, partCode, n } of parts) {
      made.set(part, { part, partCode, done: (made.get(part)?.done ?? 0) + n });
    }
  }
  return [...made.values()].sort((a, b) => a.partCode.localeCompare(b.partCode, 'en', { numeric: true }));
}
