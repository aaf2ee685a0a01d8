import { describe, expect, it } from 'vitest';
import { assignStations, type StationTask } from '../../../src/domain/cell/assign-stations';

// Jacobs & Chase, Operations and Supply Chain Management, Example 8.2: takt 50.4 s, five stations.
const modelJ: StationTask[] = Object.entries({
  A: [45, ''],
  B: [11, 'A'],
  C: [9, 'B'],
  D: [50, ''],
  E: [15, 'D'],
  F: [12, 'C'],
  G: [12, 'C'],
  H: [12, 'E'],
  I: [12, 'E'],
  J: [8, 'FGHI'],
  K: [9, 'J'],
} as const).map(([name, [time, after]]) => ({ name, time, after: [...after] }));

const names = (plan: ReturnType<typeof assignStations>) =>
  plan.ok ? plan.stations.map((station) => station.map(({ name }) => name).join('')) : [];

describe('tasks given to stations', () => {
  it('are those of the book, by most followers', () => {
    const plan = assignStations(modelJ, 50.4);
    expect(names(plan)).toEqual(['A', 'D', 'BECF', 'GHIJ', 'K']);
    expect(plan.ok && plan.stations.map((own) => own.reduce((sum, { time }) => sum + time, 0))).toEqual([
      45, 50, 47, 44, 9,
    ]);
  });

  it('never come before what they wait for, by either rule', () => {
    for (const rule of ['most-followers', 'heaviest-weight'] as const) {
      const plan = assignStations(modelJ, 50.4, rule);
      const order = names(plan).join('');
      expect([...order].sort().join('')).toBe('ABCDEFGHIJK');
      for (const { name, after } of modelJ) {
        for (const earlier of after) expect(order.indexOf(earlier)).toBeLessThan(order.indexOf(name));
      }
    }
  });

  it('that wait for each other are named instead of assigned', () => {
    const loop = [
      { name: 'a', time: 1, after: ['c'] },
      { name: 'b', time: 1, after: ['a'] },
      { name: 'c', time: 1, after: ['b'] },
      { name: 'd', time: 1, after: [] },
    ];
    expect(assignStations(loop, 10)).toEqual({ ok: false, loop: ['a', 'b', 'c'] });
  });

  it('that take longer than the takt have a station of their own, and are named', () => {
    const plan = assignStations(modelJ, 48);
    expect(plan).toMatchObject({ ok: true, tooLong: ['D'] });
    expect(names(plan)).toContain('D');
  });

  it('that take no time fit in anywhere', () => {
    expect(names(assignStations([{ name: 'a', time: 0, after: [] }], 1))).toEqual(['a']);
  });

  it('fill a station to the last tenth, whatever the sum of decimals comes to', () => {
    const tenths = ['a', 'b', 'c'].map((name) => ({ name, time: 0.1, after: [] }));
    expect(names(assignStations(tenths, 0.3))).toEqual(['abc']);
  });

  it('need a takt', () => {
    expect(() => assignStations(modelJ, 0)).toThrow('assignStations requires a takt above 0');
  });
});
