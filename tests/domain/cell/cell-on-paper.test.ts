import { describe, expect, it } from 'vitest';
import { type DemoCode, demoCodes } from '../../../src/demo/demo-parts';
import { normalMix } from '../../../src/demo/shift-plan';
import { changedWork, noChange } from '../../../src/domain/cell/cell-change';
import { cellCycle } from '../../../src/domain/cell/cell-cycle';
import { cyclePrecision } from '../../../src/domain/cell/cycle-precision';
import { mixedWork } from '../../../src/domain/cell/mixed-work';
import { secondPerson } from '../../../src/domain/cell/second-person';
import { carriedOver, simulatedDays } from '../../../src/domain/cell/simulated-days';
import { taktLeftMs } from '../../../src/domain/cell/takt-left';
import { demoStops, MINUTE_MS, meanCell, occasionals, planOf, spreadCell } from './demo-cell';

const minutes = (ms: number) => ms / MINUTE_MS;

describe('all parts in their mix', () => {
  const mix = (parts: (code: DemoCode) => number) =>
    mixedWork(
      demoCodes.map((code) => ({
        work: { ...meanCell(code), occasionals: occasionals() },
        parts: parts(code),
      })),
    );

  it('take in the demo’s normal mix 1.429 minutes a part, occasional work in, less what V does beside the machine', () => {
    // demo/README 6.4: 1.4291 with 0.10875 of occasional work on each; on V most of it falls into the machine's time.
    const work = mix((code) => 100 * normalMix[code])!;
    const { cycleMs, occasionalMs } = cellCycle(work);
    const cycle = demoCodes.reduce(
      (sum, code) => sum + normalMix[code] * cellCycle(meanCell(code)).cycleMs,
      0,
    );
    expect(minutes(cycleMs)).toBeCloseTo(minutes(cycle), 6);
    expect(minutes(cycleMs) + 0.10875).toBeCloseTo(1.4291, 3);
    expect(minutes(occasionalMs)).toBeLessThan(0.10875);
    expect(minutes(occasionalMs)).toBeGreaterThan(0.098);
  });

  it('have occasional work as often as each of them has it', () => {
    const work = mix(() => 7)!;
    expect(work.occasionals.map(({ name, everyParts }) => [name, everyParts])).toEqual([
      ['O1', 20],
      ['O2', 8],
      ['O3', 40],
    ]);
  });

  it('have it less often where it comes with some of them only: once in 8 of three quarters is once in 10⅔', () => {
    const both = mixedWork([
      { work: { ...meanCell('M'), occasionals: occasionals().slice(1, 2) }, parts: 3 },
      { work: meanCell('S'), parts: 1 },
    ])!;
    expect(both.occasionals.map(({ everyParts }) => everyParts)).toEqual([10.6666667]);
  });

  it('of which one alone is made are that one', () => {
    const alone = mix((code) => (code === 'V' ? 3 : 0))!;
    expect(cellCycle(alone).partMs).toBeCloseTo(
      cellCycle({ ...meanCell('V'), occasionals: occasionals() }).partMs,
      6,
    );
  });

  it('give an element that a part lacks no time on it', () => {
    const whole = meanCell('M');
    const bare = { ...whole, elements: whole.elements.filter(({ name }) => name !== 'E6') };
    const both = mixedWork([
      { work: bare, parts: 1 },
      { work: whole, parts: 1 },
    ])!;
    const own = (work: typeof whole) => work.elements.find(({ name }) => name === 'E6')!.meanMs;
    expect(own(both)).toBeCloseTo(own(whole) / 2, 6);
  });

  it('are none where nothing was made', () => {
    expect(mix(() => 0)).toBeNull();
  });
});

describe('how near a study is', () => {
  it('is by Student’s t: cycles of 4, 5 and 6 minutes are 5 ± 2.484', () => {
    const timesMs = [4, 5, 6].map((time) => time * MINUTE_MS);
    const work = {
      elements: [{ name: 'a', work: 'manual', place: 'external', timesMs, meanMs: 5 * MINUTE_MS } as const],
      occasionals: [],
      complete: [0, 1, 2],
    };
    expect(cyclePrecision(work)).toBeCloseTo(2.484138 / 5, 6);
    expect(cyclePrecision({ ...work, complete: [0] })).toBeNull();
  });
});

describe('what is left of the takt', () => {
  const day = {
    dayMs: 420 * MINUTE_MS,
    partsPerDay: 252,
    occasionalMs: 0.1 * MINUTE_MS,
    reworkMs: 2 * MINUTE_MS,
    days: {
      // Two minutes every 40 of work, and one every 20: a tenth.
      stops: [
        { reason: 'a', label: '', holdsMachine: true, everyMs: 40 * MINUTE_MS, lengthsMs: [120_000] },
        { reason: 'b', label: '', holdsMachine: false, everyMs: 20 * MINUTE_MS, lengthsMs: [30_000, 90_000] },
      ],
      scrapShare: 0.01,
      reworkShare: 0.02,
    },
  };

  it('is 420/1.1 · 0.99/252 − 0.1 − 0.04 minutes', () => {
    expect(minutes(taktLeftMs(day))).toBeCloseTo(((420 / 1.1) * 0.99) / 252 - 0.14, 9);
  });

  it('is all of it where nothing stops the cell', () => {
    const calm = { ...day, occasionalMs: 0, days: { stops: [], scrapShare: 0, reworkShare: 0 } };
    expect(minutes(taktLeftMs(calm))).toBeCloseTo(420 / 252, 9);
  });

  it.each(demoCodes)('fits the work of code %s where the simulated day gives what is wanted', (code) => {
    const work = { ...spreadCell(code, 200), occasionals: occasionals() };
    const stops = demoStops();
    const { meanGood } = simulatedDays(planOf(work, { stops }), 1, 100).summary;
    const { cycleMs, occasionalMs } = cellCycle(work);
    // Wanted is what the cell can do: the cycle then is what is left, but for what hands or machine absorb.
    const days = { stops, scrapShare: 0, reworkShare: 0 };
    const leftMs = taktLeftMs({ ...day, partsPerDay: meanGood, occasionalMs, reworkMs: 0, days });
    expect(leftMs / cycleMs).toBeGreaterThan(0.93);
    expect(leftMs / cycleMs).toBeLessThan(1.02);
  });
});

describe('a second person', () => {
  it('takes on M the clean-up, so that the machine governs', () => {
    const names = secondPerson(meanCell('M'));
    const moved = Object.fromEntries(names.map((name) => [name, 'other'] as const));
    expect(names).toHaveLength(1);
    expect(minutes(cellCycle(changedWork(meanCell('M'), { ...noChange, moved })).partMs)).toBeCloseTo(1.1, 3);
  });

  it('takes nothing on V, where the hands wait for the machine already', () => {
    expect(secondPerson(meanCell('V'))).toEqual([]);
  });

  it('halves the work of a cell by hand as nearly as neighbours allow', () => {
    const work = meanCell('M');
    const byHand = { ...work, elements: work.elements.filter(({ place }) => place !== 'machine') };
    const names = secondPerson(byHand);
    const taken = byHand.elements
      .filter(({ name }) => names.includes(name))
      .reduce((sum, { meanMs }) => sum + meanMs, 0);
    expect(Math.abs(minutes(taken) - 1.2188 / 2)).toBeLessThan(0.12);
  });
});

describe('what a short run tells of a long one', () => {
  const before = planOf({ ...spreadCell('M', 200), occasionals: occasionals() }, { stops: demoStops() });
  const work = changedWork(before.work, { ...noChange, loadingPct: 70 });
  const after = { ...before, work };

  it('is what all of it will say, within two parts a day, and nearer than the short run alone', () => {
    const long = simulatedDays(before, 1, 60);
    const told = carriedOver(long, simulatedDays(before, 1, 10), simulatedDays(after, 1, 10));
    const will = simulatedDays(after, 1, 60).summary.meanGood;
    expect(Math.abs(told.summary.meanGood - will)).toBeLessThan(2);
    const alone = simulatedDays(after, 1, 10).summary.meanGood;
    expect(Math.abs(told.summary.meanGood - will)).toBeLessThan(Math.abs(alone - will));
  });

  it('is the long run itself where nothing was changed', () => {
    const long = simulatedDays(before, 1, 60);
    const short = simulatedDays(before, 1, 10);
    expect(carriedOver(long, short, short).summary).toEqual(long.summary);
  });
});
