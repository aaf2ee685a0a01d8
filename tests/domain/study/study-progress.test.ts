import { describe, expect, it } from 'vitest';
import { cycleTimes, studyProgress } from '../../../src/domain/study/study-progress';
import { usualPrecision } from '../../../src/domain/study/summarise-study';
import { coefficientOfVariation } from '../../../src/statistics/coefficient-of-variation';
import { fixtureRows } from './demo-rows';
import { openStudy, studyOf, tapAfter } from './study-at-the-bench';

const rows = async (loads: readonly number[]) => {
  const at = await openStudy();
  for (const load of loads) for (const ms of [load, 5_000, 3_000]) tapAfter(at, ms);
  return studyOf(at.bench).readings.map(({ row }) => row);
};

describe('the cycle of the invented shop’s study', () => {
  // Of the invented shop: manual total of the 28 complete cycles 1.198 min observed, 1.223 rated, CV 7.2 and 4.5 %.
  const byHand = fixtureRows().filter(({ work }) => work !== 'machine');

  it('is 1.223 min of rated work by hand in 28 whole cycles, ± 1.75 %', () => {
    const { cycleMs, precision } = studyProgress(byHand);
    expect(cycleMs).toHaveLength(28);
    expect(cycleMs.reduce((sum, ms) => sum + ms, 0) / 28 / 60_000).toBeCloseTo(1.223, 3);
    expect(precision! * 100).toBeCloseTo(1.75, 2);
  });

  it('spreads less rated than observed: 7.2 % to 4.5 %', () => {
    const share = (times: readonly number[]) => coefficientOfVariation(times) * 100;
    expect(share(cycleTimes(byHand, ({ observedMs }) => observedMs!))).toBeCloseTo(7.2, 1);
    expect(share(cycleTimes(byHand))).toBeCloseTo(4.5, 1);
  });

  it('needs no more of this operator: ± 1.75 % is under half of what a rating is good for', () => {
    expect(studyProgress(byHand)).toMatchObject({ more: 0, moreCannotHelp: true });
  });

  it('is helped by more where most of it is a machine’s: nobody judged that, and the rating leaves little open', () => {
    const cycle = (runMs: number, place: number) => {
      const row = { ...byHand[0]!, cycle: place + 1, ratingPct: 100 };
      const run = { ...row, element: 'Run', elementNo: 9, work: 'machine', observedMs: runMs } as const;
      return [{ ...row, observedMs: 10_000 }, run];
    };
    const runs = [88_000, 92_000, 90_000, 89_000, 91_000, 88_000, 92_000, 90_000];
    const { precision, moreCannotHelp } = studyProgress(runs.flatMap(cycle));
    // Below half of 5 %, and above half of the 0.5 % that a tenth of the cycle, by hand, is rated to.
    expect(precision!).toBeLessThan(0.025);
    expect(precision!).toBeGreaterThan(0.0025);
    expect(moreCannotHelp).toBe(false);
  });

  it('is widened most by edge cleaning', () => {
    expect(studyProgress(byHand).watchNext).toBe('E6 clean up edges');
  });
});

describe('the progress of a study', () => {
  it('counts the machine’s run and not the work inside it where the run is longer', async () => {
    // 2 s by hand, and the longer of 5 and 3 s.
    expect(studyProgress(await rows([2_000])).cycleMs).toEqual([7_000]);
  });

  it('counts no cycle whose elements of the method have not all been read', async () => {
    const at = await openStudy();
    for (const ms of [2_000, 5_000]) tapAfter(at, ms);
    const wholeSoFar = () => {
      const soFar = studyOf(at.bench).readings.map(({ row }) => row);
      return studyProgress(soFar, usualPrecision, 3).cycleMs.length;
    };
    expect(wholeSoFar()).toBe(0);
    tapAfter(at, 3_000);
    expect(wholeSoFar()).toBe(1);
  });

  it('has no precision below five whole cycles', async () => {
    expect(studyProgress(await rows([2_000, 2_500, 1_900, 2_100]))).toMatchObject({
      precision: null,
      more: null,
    });
    expect(studyProgress(await rows([2_000, 2_500, 1_900, 2_100, 2_000])).precision).not.toBeNull();
  });

  it('leaves a cycle out that lacks an element or has one left out', async () => {
    const all = await rows([2_000, 2_100, 2_200]);
    const marked = all.map((row) =>
      row.cycle === 2 && row.element === 'Load' ? { ...row, excluded: 'interruption' } : row,
    );
    const lacking = marked.filter(({ cycle, element }) => cycle !== 3 || element !== 'Clean');
    expect(studyProgress(lacking).cycleMs).toEqual([7_000]);
  });
});
