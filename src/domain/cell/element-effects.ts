import { cellCycle } from './cell-cycle';
import type { CellPlace, CellWork } from './cell-work';

/** What shortening one element does to the output. */
export interface ElementEffect {
  readonly name: string;
  readonly place: CellPlace | 'occasional';
  /** Mean time of one occurrence, milliseconds. */
  readonly meanMs: number;
  /** Change of output for 1 % off the element, as a share: 0.002 is 0.2 %. */
  readonly gain: number;
}

const OFF = 0.01;

/**
 * Change of output for 1 % off each element, with everything else as it is, largest first; elements alike in
 * effect stay in the order of the method.
 *
 * Formula: gain = C/C′ − 1
 *   C, C′  time a part before and after, each with the maximum taken cycle by cycle
 */
export function elementEffects(work: CellWork, machines = 1): ElementEffect[] {
  const beforeMs = cellCycle(work, machines).partMs;
  const gainOf = (changed: CellWork) => beforeMs / cellCycle(changed, machines).partMs - 1;
  const repetitive = work.elements.map(({ name, place, meanMs }): ElementEffect => {
    const gain = gainOf({
      ...work,
      elements: work.elements.map((own) => (own.name === name ? shorter(own) : own)),
    });
    return { name, place, meanMs, gain };
  });
  const occasional = work.occasionals.map(({ name, meanMs }): ElementEffect => {
    const gain = gainOf({
      ...work,
      occasionals: work.occasionals.map((own) => (own.name === name ? shorter(own) : own)),
    });
    return { name, place: 'occasional', meanMs, gain };
  });
  return [...repetitive, ...occasional].sort((a, b) => b.gain - a.gain);
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

/** What 1 % off each kind of work does: the elements of a kind added up. */
export interface KindEffects {
  /** Hand work while the machine stands, occasional work with it. */
  readonly outside: number;
  /** Hand work while the machine runs. */
  readonly inside: number;
  readonly machine: number;
  /** Another person's. */
  readonly other: number;
}

/** Adds the effects of elements up by kind, for the answer in one sentence. */
export function kindEffects(effects: readonly ElementEffect[]): KindEffects {
  const sum = (belongs: (place: ElementEffect['place']) => boolean) =>
    effects.reduce((total, { place, gain }) => total + (belongs(place) ? gain : 0), 0);
  return {
    outside: sum((place) => place === 'external' || place === 'occasional'),
    inside: sum((place) => place === 'internal'),
    machine: sum((place) => place === 'machine'),
    other: sum((place) => place === 'other'),
  };
}
