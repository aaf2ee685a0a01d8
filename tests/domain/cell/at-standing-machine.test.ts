import { expect, it } from 'vitest';
import { activityChart } from '../../../src/domain/cell/activity-chart';
import { atStandingMachine } from '../../../src/domain/cell/at-standing-machine';
import type { CellElement, CellPlace } from '../../../src/domain/cell/cell-work';
import { startsWith } from '../../../src/domain/study/starts-with';

const element = (name: string, place: CellPlace, meanMs: number): CellElement => ({
  name,
  place,
  work: place === 'machine' ? 'machine' : 'manual',
  timesMs: [meanMs],
  meanMs,
});
const elements = [
  element('load', 'external', 6_000),
  element('drill', 'machine', 12_000),
  element('deburr', 'internal', 4_000),
  element('unload', 'external', 5_000),
];

it('takes the part before out first and starts the machine with the loading, as a study of the same method says', () => {
  expect(atStandingMachine(elements).map(({ name }) => name)).toEqual(['unload', 'load']);
  const listed = elements.map(({ name, place, work }) => ({
    name,
    work,
    placement: place === 'internal' ? ('internal' as const) : ('external' as const),
  }));
  expect(listed[startsWith(listed, 1)]!.name).toBe('load');
  const [operator, machine] = activityChart({ elements, occasionals: [], complete: [0] }).lanes;
  expect(operator!.activities.map(({ name }) => name)).toEqual(['unload', 'load', 'deburr', '']);
  expect(machine!.activities.map(({ name, fromMs }) => [name, fromMs])).toEqual([
    ['', 0],
    ['drill', 11_000],
  ]);
});

it('keeps the order of the list where the machine comes last, and without a machine', () => {
  const named = (...list: CellElement[]) => atStandingMachine(list).map(({ name }) => name);
  const [load, drill, , unload] = elements as [CellElement, CellElement, CellElement, CellElement];
  expect(named(unload, load, drill)).toEqual(['unload', 'load']);
  expect(named(load, unload)).toEqual(['load', 'unload']);
});
