import { branchesOf } from './branches';
import { cellCycle, partTimes } from './cell-cycle';
import type { CellPlace, CellWork } from './cell-work';
import { secondOut, type WorkKindOfCell } from './second-out';

/** What shortening one element does to the output. */
export interface ElementEffect {
  readonly name: string;
  readonly place: CellPlace;
  /** What it takes of the time a part, by itself: mean time × frequency, milliseconds. */
  readonly perPartMs: number;
  /** Change of output for a second less of it each time it is done, or for none of it where it takes less, as a share: 0.012 is 1.2 %. */
  readonly bySecond: number;
  /** Change of output for a tenth less of it, as a share. */
  readonly byTenth: number;
}

const OFF = 0.1;
const SECOND_MS = 1_000;

/**
 * What less of each element gives, with everything else as it is: a second less, and a tenth less. What gives most
 * for a second comes first; where a second counts alike, what gives more for a tenth, which is what takes longer.
 *
 * Formula: byTenth = C/C′ − 1, bySecond = g·s/(C − g·s)
 *   C, C′  time a part before and after, each with the maximum taken cycle by cycle
 *   g      of a second less of that kind of work, what turns up in the time a part; of occasional work in one part
 *   s      a second, or all of it where it takes less
 */
export function elementEffects(work: CellWork): ElementEffect[] {
  const beforeMs = cellCycle(work).partMs;
  const seconds = secondOut(work);
  const byTenth = (changed: CellWork) => beforeMs / cellCycle(changed).partMs - 1;
  const bySecond = (gained: number, meanMs: number) => {
    const lessMs = gained * Math.min(SECOND_MS, meanMs);
    return lessMs / Math.max(1, beforeMs - lessMs);
  };
  const repetitive = work.elements.map(({ name, place, timesMs, meanMs: perPartMs }): ElementEffect => {
    // In a mix it is not done on every part, and where it is not no second of it can go.
    const secondMs = timesMs.reduce((sum, ms) => sum + Math.min(SECOND_MS, ms), 0) / timesMs.length;
    const elements = work.elements.map((own) => (own.name === name ? shorter(own) : own));
    const gained = seconds[kindOf[place]]?.gained ?? 0;
    return {
      name,
      place,
      perPartMs,
      bySecond: bySecond(gained, secondMs),
      byTenth: byTenth({ ...work, elements }),
    };
  });
  const branches = branchesOf(work);
  const occasional = work.occasionals.map(({ name, place, meanMs, everyParts }, index): ElementEffect => {
    const changed = (change: (ms: number) => number) =>
      work.occasionals.map((own, i) => (i === index ? { ...own, meanMs: change(own.meanMs) } : own));
    const lessMs = Math.min(SECOND_MS, meanMs / 10);
    const lessThanMs = partTimes(
      branches,
      changed((ms) => ms - lessMs),
      1,
    ).partMs;
    const gained = lessMs > 0 ? Math.max(0, beforeMs - lessThanMs) / lessMs : 0;
    return {
      name,
      place,
      perPartMs: meanMs / everyParts,
      bySecond: bySecond(gained, meanMs),
      byTenth: byTenth({ ...work, occasionals: changed((ms) => ms * (1 - OFF)) }),
    };
  });
  return [...repetitive, ...occasional].sort(mostFirst);
}

/** A second of one kind of work counts alike but for rounding. */
const ALIKE = 1e-9;

/** Most for a second first; where that is alike, most for a tenth. */
export function mostFirst(a: ElementEffect, b: ElementEffect): number {
  const apart = b.bySecond - a.bySecond;
  return Math.abs(apart) > ALIKE ? apart : b.byTenth - a.byTenth;
}

function shorter<Own extends { readonly timesMs: readonly number[]; readonly meanMs: number }>(
  element: Own,
): Own {
  return {
    ...element,
    timesMs: element.timesMs.map((time) => time * (1 - OFF)),
    meanMs: element.meanMs * (1 - OFF),
  };
}

/** Which kind the work of a place is. */
export const kindOf: Record<CellPlace, WorkKindOfCell> = {
  external: 'outside',
  internal: 'inside',
  machine: 'machine',
  other: 'other',
};
