import { describe, expect, it } from 'vitest';
import type { CellPlan } from '../../../src/domain/cell/cell-plan';
import { compareRuns, isShown, summariseRun } from '../../../src/domain/cell/compare-cells';
import { leadByDay } from '../../../src/domain/cell/lead-by-day';
import { CellSimulation } from '../../../src/domain/cell/simulate-cell';
import { pairedComparison } from '../../../src/statistics/paired-comparison';
import { quantiles } from '../../../src/statistics/quantiles';
import { seededRandom } from '../../../src/statistics/seeded-random';
import { demoStops, MINUTE_MS, planOf, spreadCell } from './demo-cell';

const DAY_MS = 420 * MINUTE_MS;
const mean = (all: readonly number[]) => all.reduce((sum, own) => sum + own, 0) / all.length;
const flat = (days: readonly (readonly number[])[]) => ({
  leadTimesMs: Float64Array.from(days.flat()),
  releasedByDay: days.map((own) => own.length),
});

/** Days of so many parts, those of one day alike by chance, one day longer than another. */
function randomDays(seed: number, count: number): number[][] {
  const random = seededRandom(seed);
  return Array.from({ length: count }, () => {
    const dayMs = 10 + 20 * random();
    return Array.from({ length: Math.floor(30 * random()) }, () => dayMs + 15 * random());
  });
}

describe('lead times day by day', () => {
  it('have the mean and the 0.9 quantile of all parts, and the parts inside of Little’s law', () => {
    for (let seed = 1; seed <= 50; seed += 1) {
      const days = randomDays(seed, 40);
      const run = flat(days);
      const { mean: means, high, inside } = leadByDay(run, 40, 1_000)!;
      expect(mean(means)).toBeCloseTo(mean(days.flat()), 9);
      expect(Math.abs(mean(high) - quantiles(run.leadTimesMs, [0.9])[0]!)).toBeLessThan(0.2);
      expect(mean(inside)).toBeCloseTo(days.flat().reduce((sum, own) => sum + own, 0) / 40_000, 9);
    }
  });

  it('are the plain daily means where every day releases as many', () => {
    const random = seededRandom(5);
    const days = Array.from({ length: 20 }, () => Array.from({ length: 8 }, () => 100 * random()));
    const { mean: means } = leadByDay(flat(days), 20, 1_000)!;
    for (const [day, own] of days.entries()) expect(means[day]).toBeCloseTo(mean(own), 9);
  });

  it('leave out what was released after these days, and are none where nothing was', () => {
    const days = [...randomDays(3, 10), [9_999, 9_999]];
    expect(leadByDay(flat(days), 10, 1)).toEqual(leadByDay(flat(days.slice(0, 10)), 10, 1));
    expect(leadByDay(flat([[], [], [5]]), 2, 1)).toBeNull();
    expect(leadByDay(flat([[7, 7], [7], []]), 3, 1)!.high).toEqual([7, 7, 7]);
  });

  it('hold the true difference of 300 pairs of shops in 92 of 100 intervals of the mean, and in 90 of the 9 of 10', () => {
    // Both have the same law, so the true difference is 0; parts of a day are alike, which parts alone would not tell.
    let [meanHeld, highHeld, byParts] = [0, 0, 0];
    for (let pair = 1; pair <= 300; pair += 1) {
      const runs = [randomDays(2 * pair, 60), randomDays(100_000 + 2 * pair, 60)];
      const [first, second] = runs.map((days) => leadByDay(flat(days), 60, 1)!) as [
        NonNullable<ReturnType<typeof leadByDay>>,
        NonNullable<ReturnType<typeof leadByDay>>,
      ];
      if (!isShown(pairedComparison(first.mean, second.mean))) meanHeld += 1;
      if (!isShown(pairedComparison(first.high, second.high))) highHeld += 1;
      const [one, other] = runs.map((days) => days.flat()) as [number[], number[]];
      const parts = Math.min(one.length, other.length);
      if (!isShown(pairedComparison(one.slice(0, parts), other.slice(0, parts)))) byParts += 1;
    }
    expect(meanHeld / 300).toBeGreaterThan(0.92);
    expect(highHeld / 300).toBeGreaterThan(0.9);
    expect(byParts / 300).toBeLessThan(0.7);
  });
});

describe('a difference of lead times', () => {
  const before = planOf(spreadCell('M', 200), { stops: demoStops() });
  const run = (plan: CellPlan, seed = 1) => {
    const simulation = new CellSimulation(plan, seed);
    simulation.runUntilDay(60);
    return simulation.result();
  };

  it('is shown with lots of 19 instead of 20, since both met the same luck, and lies in its interval', () => {
    const [now, then] = [run(before), run({ ...before, arrivalLot: 19 })];
    const { lead, leadHigh, inside } = compareRuns(now, then, DAY_MS);
    const by = summariseRun(then).meanLeadMs - summariseRun(now).meanLeadMs;
    expect(isShown(lead)).toBe(true);
    // By formula half a part’s interval less: c·1/2.
    expect(by / (-now.intervalMs / 2)).toBeGreaterThan(0.8);
    expect(by / (-now.intervalMs / 2)).toBeLessThan(1.2);
    expect(lead!.difference / by).toBeCloseTo(1, 1);
    expect(lead!.upper - lead!.lower).toBeLessThan(0.5 * Math.abs(by));
    expect(leadHigh!.upper).toBeLessThan(0);
    expect(inside!.difference).toBeCloseTo(then.meanInside - now.meanInside, 1);
  });

  it('is none at all where nothing was changed, and not shown where there is no interval', () => {
    const now = run(before);
    const { lead, leadHigh, inside } = compareRuns(now, now, DAY_MS);
    for (const own of [lead, leadHigh, inside]) {
      expect([own!.difference, own!.lower, own!.upper]).toEqual([0, 0, 0]);
    }
    expect(isShown(null)).toBe(false);
  });
});
