import { describe, expect, it } from 'vitest';
import { addReading } from '../../src/statistics/add-reading';
import { readingsSummary } from '../../src/statistics/readings-summary';
import { runningMeanInterval } from '../../src/statistics/running-mean-interval';
import { type RunningStatistics, runningStatistics } from '../../src/statistics/running-statistics';
import { seededRandom } from '../../src/statistics/seeded-random';

const random = seededRandom(1);
const million = Array.from({ length: 1_000_000 }, () => 1 + random());

/** The least of many timings in ms, both jobs in turn, so that a busy machine slows neither alone. */
function leastTimes(jobs: readonly (() => void)[], rounds: number): number[] {
  const least = jobs.map(() => Number.POSITIVE_INFINITY);
  for (let round = 0; round < rounds; round += 1) {
    for (const [i, job] of jobs.entries()) {
      const start = performance.now();
      job();
      least[i] = Math.min(least[i]!, performance.now() - start);
    }
  }
  return least;
}

describe('the speed of live figures', () => {
  it('one update at 10,000 readings costs at most twice one at 10', () => {
    const taps = (state: RunningStatistics) => () => {
      for (let tap = 0; tap < 500; tap += 1) runningMeanInterval(addReading(state, million[tap]!), 0.95);
    };
    const [few, many] = [10, 10_000].map((n) => million.slice(0, n).reduce(addReading, runningStatistics));
    const [atTen, atTenThousand] = leastTimes([taps(few!), taps(many!)], 60);
    expect(atTenThousand! / atTen!).toBeLessThanOrEqual(2);
  });

  it('a full summary of 1,000,000 readings takes at most five passes that only add them', () => {
    let kept = 0;
    const adding = () => {
      let sum = 0;
      for (let i = 0; i < million.length; i += 1) sum += million[i]!;
      kept += sum;
    };
    const [add, summary] = leastTimes([adding, () => void readingsSummary(million, 0.95)], 40);
    expect(kept).toBeGreaterThan(0);
    expect(summary! / add!).toBeLessThanOrEqual(5);
  });
});
