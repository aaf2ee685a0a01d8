import { describe, expect, it } from 'vitest';
import reference from '../../../fixtures/reference/cell-reference.json';
import { changedWork, noChange } from '../../../src/domain/cell/cell-change';
import { cellCycle } from '../../../src/domain/cell/cell-cycle';
import type { CellPlan } from '../../../src/domain/cell/cell-plan';
import type { CellElement, CellPlace } from '../../../src/domain/cell/cell-work';
import { moreGood, summariseRun } from '../../../src/domain/cell/compare-cells';
import { randomStreams } from '../../../src/domain/cell/random-streams';
import { cyclesInARow, resampledCycles } from '../../../src/domain/cell/resampled-cycles';
import { CellSimulation } from '../../../src/domain/cell/simulate-cell';
import { leadTimeTerms } from '../../../src/statistics/lead-time-terms';
import { seededRandom } from '../../../src/statistics/seeded-random';
import { welchComparison } from '../../../src/statistics/welch-comparison';
import { demoStops, MINUTE_MS, meanCell, mixedCell, occasionals, planOf, spreadCell } from './demo-cell';

function run(plan: CellPlan, days = 200, seed = 1) {
  const simulation = new CellSimulation(plan, seed);
  simulation.runUntilDay(days);
  return simulation.result();
}

/** The demo shop as it works: the normal mix, its stoppages, defects and set-ups, hands a little quicker than standard. */
function demoPlan(trolley = 8, change: Partial<CellPlan> = {}): CellPlan {
  const setUp = { name: 'set-up', place: 'external', everyParts: 28 } as const;
  const setUps = { ...setUp, timesMs: [2 * MINUTE_MS], meanMs: 2 * MINUTE_MS };
  const work = { ...mixedCell(4_000, 0.985), occasionals: [...occasionals(trolley), setUps] };
  return planOf(work, {
    stops: demoStops(),
    scrapShare: 0.00625,
    reworkShare: 0.01875,
    reworkMs: 0.9 * MINUTE_MS,
    trolley,
    ...change,
  });
}

describe('a simulated cell', () => {
  it('that never varies gives a part a cycle', () => {
    for (const code of ['M', 'V'] as const) {
      const { intervalMs } = run(planOf(meanCell(code)), 50);
      expect(intervalMs / cellCycle(meanCell(code)).cycleMs).toBeCloseTo(1, 2);
    }
  });

  it('with two machines that never vary gives a part every time the operator is through', () => {
    const { intervalMs } = run(planOf(meanCell('V'), { machines: 2 }), 50);
    expect(intervalMs / cellCycle(meanCell('V'), 2).cycleMs).toBeCloseTo(1, 2);
  });

  it('with spread gives a part for every mean of the longer branch', () => {
    const work = spreadCell('T', 500);
    expect(run(planOf(work), 400).intervalMs / cellCycle(work).cycleMs).toBeCloseTo(1, 2);
  });

  it('gives the same days for the same seed, and others for another', () => {
    expect(run(demoPlan(), 5)).toEqual(run(demoPlan(), 5));
    expect(run(demoPlan(), 5, 2).goodByDay).not.toEqual(run(demoPlan(), 5).goodByDay);
  });

  it('goes on where it was left: ten days and then ten are twenty', () => {
    const whole = new CellSimulation(demoPlan(), 1);
    whole.runUntilDay(20);
    const halves = new CellSimulation(demoPlan(), 1);
    halves.runUntilDay(10);
    halves.result();
    halves.runUntilDay(20);
    expect(halves.result()).toEqual(whole.result());
  });

  it('waits for the other person without a place between them, and less with places', () => {
    const moved = { E3: 'other', E4: 'other', E5: 'other' } as const;
    const work = changedWork(spreadCell('M', 400), { ...noChange, moved, elementPct: { E3: 360 } });
    const interval = (buffer: number) => run(planOf(work, { buffer }), 200).intervalMs;
    expect(interval(0)).toBeGreaterThan(1.01 * interval(1));
    expect(interval(1)).toBeGreaterThan(interval(10));
    expect(interval(10) / cellCycle(work).partMs).toBeGreaterThan(0.999);
  });

  it('loses no output to what holds the operator for less than he waits, and all to what holds the machine', () => {
    // V: the operator waits 0.425 minutes a door; a stop of 0.4 comes once in ten minutes of work.
    const stop = { reason: 'x', label: '', everyMs: 10 * MINUTE_MS, lengthsMs: [0.4 * MINUTE_MS] };
    const interval = (holdsMachine: boolean) =>
      run(planOf(meanCell('V'), { stops: [{ ...stop, holdsMachine }] }), 100).intervalMs / MINUTE_MS;
    // Two of them in one door are rare, and pass the slack.
    expect(interval(false)).toBeLessThan(1.94);
    expect(interval(true)).toBeCloseTo(1.9286 * 1.04, 2);
  });

  it('is none where nothing takes time', () => {
    const work = meanCell('M');
    const nothing = { ...work, elements: work.elements.map((own) => ({ ...own, timesMs: [0], meanMs: 0 })) };
    expect(() => new CellSimulation(planOf(nothing), 1)).toThrow(
      'CellSimulation requires work that takes time',
    );
  });

  it('releases parts one by one when the trolley holds one, and takes lots of one', () => {
    const { leadTimesMs, flowMs } = run(
      planOf(meanCell('M'), { arrivalLot: 1, refillAt: 0, trolley: 1 }),
      10,
    );
    expect(leadTimesMs[100]! / flowMs).toBeCloseTo(1, 9);
  });
});

describe('the demo shop, simulated', () => {
  const racks = run(demoPlan(), 400);
  const small = run(demoPlan(4, { arrivalLot: 5, refillAt: 2 }), 400);

  // demo/README 6.6: 257.6 good a day; lead time mean 28.7, P90 44.2, 17.7 inside; in small lots 11.9, 17.2, 7.1.
  it('has a lead time of 28.7 minutes, and 11.9 in lots of 5 with trolleys of 4', () => {
    const before = summariseRun(racks);
    expect(Math.abs(before.meanGood - 257.6)).toBeLessThan(2);
    expect(Math.abs(before.meanLeadMs / MINUTE_MS - 28.7)).toBeLessThan(0.6);
    expect(Math.abs(before.highLeadMs / MINUTE_MS - 44.2)).toBeLessThan(1.5);
    expect(Math.abs(before.meanInside - 17.7)).toBeLessThan(0.5);
    const after = summariseRun(small);
    expect(Math.abs(after.meanGood - 250)).toBeLessThan(2);
    expect(Math.abs(after.meanLeadMs / MINUTE_MS - 11.9)).toBeLessThan(0.3);
    expect(Math.abs(after.highLeadMs / MINUTE_MS - 17.2)).toBeLessThan(0.6);
    expect(Math.abs(after.meanInside - 7.1)).toBeLessThan(0.3);
  });

  it('has as many parts inside as Little’s law says, within 1 % in every run', () => {
    for (const { meanInside, insideByLittle } of [racks, small, run(demoPlan(), 40, 5)]) {
      expect(Math.abs(meanInside / insideByLittle - 1)).toBeLessThan(0.01);
    }
  });

  it('has the lead time of the three terms where nothing comes in step with the lots', () => {
    const plan = planOf(spreadCell('M', 1_000), { arrivalLot: 20, refillAt: 3, trolley: 8 });
    const { intervalMs, flowMs, ...rest } = run(plan, 300);
    const terms = leadTimeTerms({ ...plan, interval: intervalMs, flowTime: flowMs });
    expect(summariseRun({ intervalMs, flowMs, ...rest }).meanLeadMs / terms.total).toBeCloseTo(1, 2);
  });

  it('scraps what the shares say', () => {
    expect(racks.scrapped / racks.parts).toBeGreaterThan(0.0055);
    expect(racks.scrapped / racks.parts).toBeLessThan(0.007);
  });
});

describe('present beside proposed', () => {
  const before = demoPlan();
  const work = changedWork(before.work, { ...noChange, loadingPct: 90 });

  it('meets the same luck, so that the difference is far narrower than between strangers', () => {
    const paired = moreGood(run(before, 100), run({ ...before, work }, 100));
    const strangers = welchComparison(
      run({ ...before, work }, 100, 2).goodByDay,
      run(before, 100, 3).goodByDay,
    );
    expect(paired.lower).toBeGreaterThan(0);
    expect(paired.upper - paired.lower).toBeLessThan(0.4 * (strangers.upper - strangers.lower));
  });

  it('is no different when nothing was changed', () => {
    const { difference, lower, upper } = moreGood(run(before, 50), run(before, 50));
    expect([difference, lower, upper]).toEqual([0, 0, 0]);
  });
});

describe('cycles drawn again', () => {
  const random = () => randomStreams(3, 1)[0]!;

  it('come one by one where they do not follow from each other', () => {
    expect(cyclesInARow(Array.from({ length: 60 }, (_, i) => (i % 2 ? 10 : 20)))).toBe(1);
  });

  it('come in short runs of neighbours where they do, so that the order is kept', () => {
    const wave = Array.from({ length: 60 }, (_, i) => Math.sin(i / 5));
    expect(cyclesInARow(wave)).toBe(5);
    const next = resampledCycles(wave, random());
    const places = Array.from({ length: 500 }, next);
    const follows = places.filter((place, i) => i > 0 && place === (places[i - 1]! + 1) % 60).length;
    expect(follows / 500).toBeGreaterThan(0.75);
  });

  it('come each as often as any other', () => {
    const next = resampledCycles([1, 2, 3, 4], random());
    const counts = [0, 0, 0, 0];
    for (let i = 0; i < 40_000; i += 1) counts[next()]! += 1;
    for (const count of counts) expect(Math.abs(count - 10_000)).toBeLessThan(400);
  });
});

describe('streams of chance', () => {
  it('are apart: none goes on with the draws of another, and they do not rise and fall together', () => {
    const [first, second] = randomStreams(1, 2).map((stream) => Array.from({ length: 5_000 }, stream));
    expect(first!.some((value) => second!.includes(value))).toBe(false);
    const product = first!.reduce((sum, value, i) => sum + (value - 0.5) * (second![i]! - 0.5), 0) / 5_000;
    expect(Math.abs(12 * product)).toBeLessThan(0.05);
  });
});

describe('twenty random cells', () => {
  it.each(reference.cells)('run as in an independent simulation package: cell $number', (theirs) => {
    const { plan, rowsOf } = referenceCell(theirs.number);
    const simulation = new CellSimulation(plan, 1 + theirs.number);
    simulation.runParts(5_000);
    const ours = simulation.result();
    expect(cyclesInARow(rowsOf)).toBe(1);
    expect(ours.parts).toBe(theirs.parts);
    expect(ours.intervalMs / theirs.intervalMs).toBeCloseTo(1, 9);
    expect(ours.flowMs / theirs.flowMs).toBeCloseTo(1, 9);
  });
});

/** The cell of that number as fixtures/reference/cell-reference.py draws it. */
function referenceCell(number: number): { plan: CellPlan; rowsOf: number[] } {
  const draw = seededRandom(1_000 + 17 * number);
  for (let i = 0; i < 10; i += 1) draw();
  const whole = (low: number, high: number) => low + Math.floor(draw() * (high - low + 1));
  const [machines, buffer, hasOther] = [whole(1, 3), whole(0, 3), whole(0, 1)];
  const means = [whole(5, 30), whole(5, 40), whole(5, 40), whole(20, 120), whole(20, 90) * hasOther];
  const rows = Array.from({ length: 200 }, () =>
    means.map((mean) => Math.round(1_000 * mean * (0.5 + draw()))),
  );
  const places: CellPlace[] = ['external', 'internal', 'internal', 'machine', 'other'];
  const elements = places.map((place, column): CellElement => {
    const work = place === 'machine' ? 'machine' : 'manual';
    return { name: `e${column}`, work, place, timesMs: rows.map((row) => row[column]!), meanMs: 0 };
  });
  const work = { elements, occasionals: [], complete: [] };
  return {
    plan: planOf(work, { machines, buffer, putDownWith: 'e1', trolley: 1 }),
    rowsOf: rows.map((row) => row[0]! + row[1]! + row[2]!),
  };
}
