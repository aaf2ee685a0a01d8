import { describe, expect, it } from 'vitest';
import { chartSignals } from '../../src/statistics/chart-signals';
import { comparisonVerdict } from '../../src/statistics/comparison-verdict';
import { individualsChart } from '../../src/statistics/individuals-chart';
import { seededRandom } from '../../src/statistics/seeded-random';
import { twoOneSidedTests } from '../../src/statistics/two-one-sided-tests';
import { welchComparison } from '../../src/statistics/welch-comparison';

/** Normal deviates by Box and Muller from the seeded generator. */
function bellFrom(seed: number): () => number {
  const random = seededRandom(seed);
  return () => Math.sqrt(-2 * Math.log(random())) * Math.cos(2 * Math.PI * random());
}

/** Days of minutes used per minute earned: about 1.03, day to day 6.8 % (invented, of an ordinary cell). */
function days(bell: () => number, count: number, level: number): number[] {
  return Array.from({ length: count }, () => level * (1.03 + 0.07 * bell()));
}

describe('what a chart of daily figures can promise', () => {
  it('signals a shift of +15 % within 8 days in at least 80 of 100 runs, with limits of 20 days', () => {
    let signalled = 0;
    for (let run = 1; run <= 1000; run += 1) {
      const bell = bellFrom(run);
      const limits = individualsChart(days(bell, 20, 1));
      if (chartSignals(days(bell, 8, 1.15), limits).length > 0) signalled += 1;
    }
    expect(signalled).toBeGreaterThanOrEqual(800);
  });

  it('cries wolf in at most 15 of 100 runs of 8 further days when nothing changed', () => {
    let signalled = 0;
    for (let run = 1; run <= 1000; run += 1) {
      const bell = bellFrom(run);
      const limits = individualsChart(days(bell, 20, 1));
      if (chartSignals(days(bell, 8, 1), limits).length > 0) signalled += 1;
    }
    expect(signalled).toBeLessThanOrEqual(150);
  });
});

describe('what a before-and-after verdict can promise', () => {
  const verdictOf = (before: number[], after: number[], threshold: number) =>
    comparisonVerdict(welchComparison(after, before), {
      threshold,
      equivalence: twoOneSidedTests(after, before, { margin: threshold }),
    });

  it('is "not shown" in at least 90 of 100 shuffles of the labels of the same days', () => {
    const bell = bellFrom(15);
    const pool = days(bell, 15, 1.6);
    const random = seededRandom(99);
    let notShown = 0;
    for (let shuffle = 0; shuffle < 100; shuffle += 1) {
      for (let i = pool.length - 1; i > 0; i -= 1) {
        const j = Math.floor(random() * (i + 1));
        [pool[i], pool[j]] = [pool[j]!, pool[i]!];
      }
      if (verdictOf(pool.slice(0, 5), pool.slice(5), 0.05) === 'not-shown') notShown += 1;
    }
    expect(notShown).toBeGreaterThanOrEqual(90);
  });

  it('calls a true saving of a quarter improved, in at least 80 of 100 runs of 5 and 10 days', () => {
    let improved = 0;
    for (let run = 1; run <= 500; run += 1) {
      const bell = bellFrom(run);
      const verdict = verdictOf(days(bell, 5, 1.6), days(bell, 10, 1.2), 0.1);
      if (verdict.startsWith('improved')) improved += 1;
    }
    expect(improved).toBeGreaterThanOrEqual(400);
  });

  it('calls days without a change better or worse in at most 7 of 100 runs', () => {
    let wrong = 0;
    for (let run = 1; run <= 1000; run += 1) {
      const bell = bellFrom(run);
      const verdict = verdictOf(days(bell, 5, 1.6), days(bell, 10, 1.6), 0.1);
      if (/^(improved|worse)/.test(verdict)) wrong += 1;
    }
    expect(wrong).toBeLessThanOrEqual(70);
  });
});
