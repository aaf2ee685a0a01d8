import { describe, expect, it } from 'vitest';
import { compareDays } from '../../src/domain/day/compare-days';
import { dayFigures } from '../../src/domain/day/day-figures';
import { goodPartBridge } from '../../src/domain/day/good-part-bridge';
import { addedUp } from '../../src/domain/day/lost-cost';
import { observedMean } from '../../src/statistics/observed-mean';
import { minutes, week1, weeks3And4 } from './demo-shop';
import { summariesOf } from './demo-summaries';

// Expected figures: the same independent simulation as in demo-days.test.ts.

const hard = summariesOf({ from: 17, to: 17 })[0]!;
const easy = summariesOf({ from: 20, to: 20 })[0]!;
const percent = (share: number | null, digits = 1) => (100 * share!).toFixed(digits);

describe('a hard day and an easy day of the demo shop', () => {
  it('attended 450 minutes each, 420 of them planned to be worked', () => {
    expect([hard, easy].map(({ attendedMs }) => minutes(attendedMs))).toEqual([450, 450]);
    expect([hard, easy].map(({ workingMs }) => minutes(workingMs))).toEqual([420, 420]);
  });

  it('take 1.957 and 1.596 minutes a good part, with a mix of 1.884 and 1.543', () => {
    expect([hard, easy].map((day) => minutes(dayFigures(day).perGoodMs!).toFixed(3))).toEqual([
      '1.957',
      '1.596',
    ]);
    expect([hard, easy].map((day) => minutes(dayFigures(day).mixMs!).toFixed(3))).toEqual(['1.884', '1.543']);
  });

  it('have efficiencies of 96.3 and 96.7 %', () => {
    expect([hard, easy].map((day) => percent(dayFigures(day).efficiency))).toEqual(['96.3', '96.7']);
  });

  it('lie 0.204 apart in logarithms, 0.200 or 98 % of it by the mix', () => {
    const { logGap, logMix, mixShare } = compareDays(hard, easy)!;
    expect([logGap.toFixed(3), logMix.toFixed(3), percent(mixShare, 0)]).toEqual(['0.204', '0.200', '98']);
  });

  it('read the same whichever of them comes first', () => {
    expect(compareDays(easy, hard)!.mixShare).toBeCloseTo(compareDays(hard, easy)!.mixShare!, 12);
    expect(compareDays(easy, easy)!.mixShare).toBeNull();
  });

  it('have a bridge that adds up to a thousandth of a minute', () => {
    for (const day of [hard, easy, ...summariesOf(week1)]) {
      const { netMs, steps, perGoodMs } = goodPartBridge(day)!;
      const sum = steps.reduce((total, { ms }) => total + ms, netMs);
      expect(Math.abs(minutes(sum - perGoodMs))).toBeLessThan(0.001);
    }
  });
});

describe('the efficiency of the demo shop', () => {
  it('is 55.3 % on the mean in batches and 96.9 % one by one', () => {
    const mean = (days: Parameters<typeof summariesOf>[0]) =>
      observedMean(summariesOf(days).map((day) => dayFigures(day).efficiency!));
    expect([percent(mean(week1)), percent(mean(weeks3And4))]).toEqual(['55.3', '96.9']);
  });
});

describe('the lost time of the demo shop in weeks 3 and 4', () => {
  it('is 280.5 minutes recorded and cost 266.3 in output, by reason in minutes as the simulation counted', () => {
    const lost = addedUp(summariesOf(weeks3And4));
    const sum = (of: 'lostMs' | 'costMs') =>
      minutes(lost.reduce((total, each) => total + each[of], 0)).toFixed(1);
    expect([sum('lostMs'), sum('costMs')]).toEqual(['280.5', '266.3']);
    expect(
      lost.map(({ reason, count, lostMs }) => `${reason} ${count} ${minutes(lostMs).toFixed(1)}`),
    ).toEqual([
      'material 24 95.4',
      'called-away 22 62.7',
      'machine 23 61.8',
      'extraction 14 27.2',
      'quality 9 20.0',
      'not-stated 10 13.3',
    ]);
  });
});
