import { describe, expect, it } from 'vitest';
import { assignStations } from '../../../src/domain/cell/assign-stations';
import { balanceWork } from '../../../src/domain/cell/balance-work';
import { type CellCycle, cellCycle } from '../../../src/domain/cell/cell-cycle';
import { cellDays } from '../../../src/domain/cell/cell-days';
import type { CellElement } from '../../../src/domain/cell/cell-work';
import { compareLots } from '../../../src/domain/cell/compare-lots';
import { countsBetween } from '../../../src/domain/cell/counts-between';
import { costOfPart, serveMachines } from '../../../src/domain/cell/serve-machines';
import { simulatedDays } from '../../../src/domain/cell/simulated-days';
import { leadTimeTerms } from '../../../src/statistics/lead-time-terms';
import { seededRandom } from '../../../src/statistics/seeded-random';
import { demoStops, MINUTE_MS, meanCell, planOf, spreadCell } from './demo-cell';

const minutes = (ms: number) => ms / MINUTE_MS;

describe('a lot three ways', () => {
  // M by hand: all elements 0.28 + 0.9388 + 0.82 = 2.0388 minutes, the last of them boring, 0.82; cycle 1.2188.
  it('of ten of M: batch 20.388, this cell 2.0388 + 9 · 1.2188, a station each 2.0388 + 9 · 0.82', () => {
    const { batch, cell, line } = compareLots(meanCell('M'), 10, 1);
    expect(minutes(batch.lastMs)).toBeCloseTo(20.388, 2);
    expect(minutes(batch.firstMs)).toBeCloseTo(10 * (2.0388 - 0.82) + 0.82, 2);
    expect(minutes(cell.lastMs)).toBeCloseTo(2.0388 + 9 * 1.2188, 2);
    expect(minutes(line.lastMs)).toBeCloseTo(2.0388 + 9 * 0.82, 2);
    expect([batch, cell, line].map(({ inside }) => inside)).toEqual([10, 2, 9]);
  });

  it('comes out of the simulation as out of the formula where nothing varies', () => {
    const { batch, cell, line } = compareLots(meanCell('M'), 20, 1);
    for (const { lastMs, lateMs } of [batch, cell, line]) expect(lateMs / lastMs).toBeCloseTo(1, 9);
  });

  it('is late in one of ten by a little more where hands vary, and within 3 % of the formula', () => {
    const { batch, cell, line } = compareLots(spreadCell('M', 400), 20, 1);
    for (const { lastMs, lateMs } of [batch, cell, line]) {
      expect(lateMs).toBeGreaterThan(lastMs);
      expect(lateMs / lastMs).toBeLessThan(1.05);
    }
  });

  it('of one part is the same in every way', () => {
    const { batch, cell, line } = compareLots(meanCell('M'), 1, 1);
    expect([batch, cell, line].map(({ firstMs, lastMs }) => firstMs === lastMs)).toEqual([true, true, true]);
    expect(minutes(cell.lastMs)).toBeCloseTo(2.0388, 4);
  });
});

describe('the way of a part through the cell', () => {
  it('is its own cycle and the next one up to the trolley: 1.2188 + 0.28 + 0.04 + 0.25 + 0.09 on M', () => {
    const { run } = simulatedDays(planOf(meanCell('M')), 1, 5);
    expect(minutes(run.flowMs)).toBeCloseTo(1.8788, 3);
  });

  it('ends with the last internal element when nobody said with which', () => {
    const { run } = simulatedDays(planOf(meanCell('M'), { putDownWith: '' }), 1, 5);
    expect(minutes(run.flowMs)).toBeCloseTo(1.2188 + 0.28 + 0.9388, 3);
  });

  it('is one of three terms of the lead time, which the simulation splits as the formula does', () => {
    // Without what comes in step with the trolley, its exchange: the formula knows one interval.
    const plan = planOf(spreadCell('M', 400), { stops: demoStops() });
    const { run, summary } = simulatedDays(plan, 1, 200);
    const terms = leadTimeTerms({ ...plan, interval: run.intervalMs, flowTime: run.flowMs });
    expect(Math.abs(run.trolleyMs / terms.trolley - 1)).toBeLessThan(0.03);
    const lotMs = summary.meanLeadMs - run.flowMs - run.trolleyMs;
    expect(Math.abs(lotMs / terms.arrivalLot - 1)).toBeLessThan(0.03);
  });
});

describe('hand work shared out', () => {
  const chain = (names: readonly string[]) =>
    Object.fromEntries(names.map((name, place) => [name, place > 0 ? [names[place - 1]!] : []]));
  const order = chain(['E1', 'E2', 'W1', 'W2', 'E3', 'E4', 'E5', 'E6']);

  it('needs one person at a takt of 100 s, and two at 50 s', () => {
    const one = balanceWork(meanCell('M'), 100_000, order);
    expect(one?.ok && one.stations).toHaveLength(1);
    const two = balanceWork(meanCell('M'), 50_000, order);
    if (!two?.ok) throw new Error('not shared out');
    expect(two.stations.map(({ elements }) => elements.map(({ name }) => name).join(' '))).toEqual([
      'E1 E2 W1 W2 E3 E4 E5',
      'E6',
    ]);
    expect(two.balance.minimumStations).toBe(2);
    // 1.2188 minutes over two of 50 s.
    expect(two.balance.efficiencyByTakt).toBeCloseTo((1.2188 * 60) / 100, 3);
  });

  it('marks where eight cycles of ten end, above the mean where times vary', () => {
    const shared = balanceWork(spreadCell('M', 300), 100_000, order);
    if (!shared?.ok) throw new Error('not shared out');
    const { totalMs, p80Ms } = shared.stations[0]!;
    expect(p80Ms).toBeGreaterThan(1.01 * totalMs);
    expect(p80Ms).toBeLessThan(1.1 * totalMs);
  });

  it('needs as few people as the better of the two rules, whatever the order', () => {
    const random = seededRandom(5);
    let differ = 0;
    for (let again = 0; again < 300; again += 1) {
      const elements = Array.from({ length: 8 }, (_, i): CellElement => {
        const timeMs = 1_000 * (1 + Math.floor(9 * random()));
        return { name: `${i}`, work: 'manual', place: 'external', timesMs: [timeMs], meanMs: timeMs };
      });
      const after = Object.fromEntries(
        elements.map(({ name }, i) => [name, i > 0 && random() < 0.5 ? [`${Math.floor(i * random())}`] : []]),
      );
      const tasks = elements.map(({ name, meanMs }) => ({ name, time: meanMs, after: after[name]! }));
      const counts = (['most-followers', 'heaviest-weight'] as const).map((rule) => {
        const plan = assignStations(tasks, 12_000, rule);
        return plan.ok ? plan.stations.length : 0;
      });
      if (counts[0] !== counts[1]) differ += 1;
      const shared = balanceWork({ elements, occasionals: [], complete: [0] }, 12_000, after);
      expect(shared?.ok && shared.stations.length).toBe(Math.min(...counts));
    }
    expect(differ).toBeGreaterThan(5);
  });

  it('names what is longer than the takt, and what waits in a circle', () => {
    expect(balanceWork(meanCell('M'), 20_000, order)).toMatchObject({ ok: true, tooLong: ['E6'] });
    expect(balanceWork(meanCell('M'), 60_000, { ...order, E1: ['E6'] })).toMatchObject({ ok: false });
  });

  it('is none where hands have nothing to do', () => {
    const work = meanCell('M');
    const machine = work.elements.filter(({ place }) => place === 'machine');
    expect(balanceWork({ ...work, elements: machine }, 60_000, {})).toBeNull();
  });
});

describe('machines for one operator', () => {
  it('are enough with one on M and two on V, by who waits', () => {
    const served = serveMachines(cellCycle(meanCell('V')))!;
    // (0.28 + 1.6486)/(0.28 + 1.2235) = 1.283
    expect(served.ideal).toBeCloseTo(1.2828, 3);
    expect(served.choices).toHaveLength(2);
    const [one, two] = served.choices as [(typeof served.choices)[0], (typeof served.choices)[0]];
    expect(one.operatorWaits).toBeCloseTo(0.4251 / 1.9286, 3);
    expect(two.operatorWaits).toBeCloseTo(0, 9);
    expect(two.partsPerHour).toBeCloseTo(60 / 1.5035, 2);
    expect(costOfPart({ operator: 0, machine: 0 }, 1, one.partsPerHour)).toBeNull();
  });

  it('are reckoned to one past n′, which the book finds dearer than the one before: 4.5, so 4 and not 5', () => {
    // Groover, worker and machine cluster: service 0.35, walking 0.15, machine 1.90 minutes, 12 and 18 an hour.
    const [externalMs, internalMs, machineMs] = [0.35, 0.15, 1.9].map((time) => time * MINUTE_MS);
    const cycle = { ...cellCycle(meanCell('M')), externalMs, internalMs, machineMs } as CellCycle;
    const served = serveMachines(cycle)!;
    expect(served.ideal).toBeCloseTo(4.5, 9);
    // Two parts each machine and round there, one here.
    const costs = served.choices.map(({ machines, partsPerHour }) =>
      costOfPart({ operator: 12, machine: 18 }, machines, partsPerHour),
    );
    expect(costs.map((cost) => Number((cost! / 2).toFixed(5)))).toEqual([
      0.5625, 0.45, 0.4125, 0.39375, 0.425,
    ]);
  });

  it('cost a part what the rates say: (12 + 18)·1.2188/60 with one on M', () => {
    const { partsPerHour } = serveMachines(cellCycle(meanCell('M')))!.choices[0]!;
    expect(costOfPart({ operator: 12, machine: 18 }, 1, partsPerHour)).toBeCloseTo((30 * 1.2188) / 60, 3);
  });

  it('are none in a cell without one', () => {
    const work = meanCell('M');
    const byHand = { ...work, elements: work.elements.filter(({ place }) => place !== 'machine') };
    expect(serveMachines(cellCycle(byHand))).toBeNull();
  });
});

describe('counts between edges', () => {
  it('take the lower edge in, and the upper one of the last', () => {
    expect(countsBetween([0, 1, 1.5, 2, 3], [0, 1, 2, 3])).toEqual([1, 2, 2]);
  });

  it('leave out what lies outside', () => {
    expect(countsBetween([-1, 4, Number.NaN], [0, 3])).toEqual([0]);
  });
});

describe('the days of a cell without turns', () => {
  it('tell of no day, no stoppage and no part', () => {
    expect(cellDays([])).toEqual({
      days: 0,
      dayMs: null,
      stops: [],
      parts: 0,
      partsByCode: new Map(),
      scrapShare: 0,
      reworkShare: 0,
    });
  });
});
