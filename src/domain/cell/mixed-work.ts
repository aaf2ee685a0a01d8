import type { CellElement, CellWork, OccasionalWork } from './cell-work';

/** The work on one part, and how many of it are made. */
export interface MixedPart {
  readonly work: CellWork;
  readonly parts: number;
}

/** Cycles that stand for the mix: enough for a share of half a percent. */
const CYCLES = 400;

/**
 * The work of a cell on all its parts as they are made: the timed cycles of each part, as many as its share, one part
 * after the other as lots are. An element is the same one where name and place are; on a part that lacks it it takes
 * no time. Occasional work comes as often as with each part, weighted by how many are made.
 *
 * Null without parts.
 */
export function mixedWork(mix: readonly MixedPart[]): CellWork | null {
  const made = mix.filter(({ parts }) => parts > 0);
  const total = made.reduce((sum, { parts }) => sum + parts, 0);
  if (total === 0) return null;
  // By running shares, so that the counts add up to all of them.
  let before = 0;
  const rows = made.flatMap(({ work, parts }) => {
    const from = Math.round((CYCLES * before) / total);
    before += parts;
    const count = Math.round((CYCLES * before) / total) - from;
    const timed = work.elements[0]!.timesMs.length;
    // Spread over all timed cycles where not all of them are wanted.
    return Array.from({ length: count }, (_, i) => ({
      work,
      row: count < timed ? Math.floor((i * timed) / count) : i % timed,
    }));
  });
  const key = ({ name, place }: CellElement) => `${place} ${name}`;
  const known = new Map(made.flatMap(({ work }) => work.elements.map((own) => [key(own), own] as const)));
  const elements = [...known].map(([wanted, { name, work: kind, place }]): CellElement => {
    const timesMs = rows.map(
      ({ work, row }) => work.elements.find((own) => key(own) === wanted)?.timesMs[row] ?? 0,
    );
    const meanMs = timesMs.reduce((sum, time) => sum + time, 0) / timesMs.length;
    return { name, work: kind, place, timesMs, meanMs };
  });
  const isComplete = rows.flatMap(({ work, row }, i) => (work.complete.includes(row) ? [i] : []));
  return { elements, occasionals: mixedOccasionals(made, total), complete: isComplete };
}

function mixedOccasionals(made: readonly MixedPart[], total: number): OccasionalWork[] {
  const names = new Map<string, { own: OccasionalWork; times: number; timesMs: number[] }>();
  for (const { work, parts } of made) {
    for (const own of work.occasionals) {
      const key = `${own.place} ${own.name}`;
      const before = names.get(key) ?? { own, times: 0, timesMs: [] };
      names.set(key, {
        own,
        times: before.times + parts / total / own.everyParts,
        timesMs: [...before.timesMs, ...own.timesMs],
      });
    }
  }
  return [...names.values()].map(({ own, times, timesMs }) => ({
    ...own,
    // A frequency that all of them share is that one, not what divisions make of it.
    everyParts: Number((1 / times).toPrecision(9)),
    timesMs,
    meanMs: timesMs.reduce((sum, time) => sum + time, 0) / timesMs.length,
  }));
}
