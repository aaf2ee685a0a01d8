import { bench, describe } from 'vitest';
import { addReading } from '../../src/statistics/add-reading';
import { meanInterval } from '../../src/statistics/mean-interval';
import { median } from '../../src/statistics/median';
import { readingsSummary } from '../../src/statistics/readings-summary';
import { runningMeanInterval } from '../../src/statistics/running-mean-interval';
import { type RunningStatistics, runningStatistics } from '../../src/statistics/running-statistics';
import { seededRandom } from '../../src/statistics/seeded-random';

// Run with: npx vitest bench --run --config .config/vitest.config.ts --project node tests/benchmarks/statistics
// Only ratios within one run count: an update at 10,000 readings at most 2 × one at 10, the full summary at most
// 5 × one pass that only adds.

const random = seededRandom(1);
const million = Array.from({ length: 1_000_000 }, () => 1 + random());

function stateAfter(count: number): RunningStatistics {
  return million.slice(0, count).reduce(addReading, runningStatistics);
}

const states = new Map([10, 10_000].map((count) => [count, stateAfter(count)]));

describe('live figures after one tap', () => {
  for (const [count, state] of states) {
    bench(`one update and its interval at ${count} readings`, () => {
      runningMeanInterval(addReading(state, 1.5), 0.95);
    });
  }
});

describe('a million readings', () => {
  bench('one pass that only adds', () => {
    let sum = 0;
    for (let i = 0; i < million.length; i += 1) sum += million[i]!;
    if (sum < 0) throw new Error('the sum was not used');
  });
  bench('the full summary in two passes', () => {
    readingsSummary(million, 0.95);
  });
  bench('the interval by its parts', () => {
    meanInterval(million, 0.95);
  });
  bench('the median, which sorts', () => {
    median(million);
  });
});
