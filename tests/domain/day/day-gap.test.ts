import { describe, expect, it } from 'vitest';
import { compareDays } from '../../../src/domain/day/compare-days';
import { dayFigures } from '../../../src/domain/day/day-figures';
import { dayGap } from '../../../src/domain/day/day-gap';
import { type DaySummary, summariseDay } from '../../../src/domain/day/summarise-day';
import type { TurnFact } from '../../../src/domain/records/turn-fact';
import { mostBesideMix } from '../../../src/screens/review/day/most-beside-mix';
import { summariesOf } from '../../demo/demo-summaries';
import { done, turnOf } from './turn-of-day';

const summary = (happened: readonly (readonly [number, TurnFact])[]): DaySummary =>
  summariseDay('2026-03-02', [{ turn: turnOf(happened), absorbedMs: new Map(), breaks: [] }], null);
const steps = (first: DaySummary, second: DaySummary) =>
  Object.fromEntries(dayGap(first, second)!.map(({ cause, ms }) => [cause, Math.round(ms)]));

/** Two parts of 90 s each, with nothing between them; the end comes with the last. */
const calm = summary([
  [90, done()],
  [180, done()],
  [180, { kind: 'turn-ended' }],
]);
const none = {
  mix: 0,
  hands: 0,
  'scrap-rework': 0,
  stoppage: 0,
  'set-up': 0,
  'planned-break': 0,
  unaccounted: 0,
};

describe('what makes a good part take longer on one day than on another', () => {
  it('is the stoppage where nothing else differs: a minute over two parts', () => {
    const stopped = summary([
      [90, done()],
      [100, { kind: 'stopped' }],
      [160, { kind: 'resumed' }],
      [240, done()],
      [240, { kind: 'turn-ended' }],
    ]);
    expect(steps(stopped, calm)).toEqual({ ...none, stoppage: 30_000 });
    expect(steps(calm, stopped)).toEqual({ ...none, stoppage: -30_000 });
  });

  it('is the hands where each part took longer, and what nobody accounted for where the turn went on without one', () => {
    const slow = summary([
      [100, done()],
      [200, done()],
      [200, { kind: 'turn-ended' }],
    ]);
    expect(steps(slow, calm)).toEqual({ ...none, hands: 10_000 });
    const late = summary([
      [90, done()],
      [180, done()],
      [200, { kind: 'turn-ended' }],
    ]);
    expect(steps(late, calm)).toEqual({ ...none, unaccounted: 10_000 });
  });

  it('adds up to the whole, on any two days of the demo, with the share of the mix that the sentence gives', () => {
    const days = summariesOf({ from: 1, to: 20 });
    for (const [place, first] of days.entries()) {
      const second = days[(place + 7) % 20]!;
      const all = dayGap(first, second)!;
      const [own, other] = [dayFigures(first).perGoodMs!, dayFigures(second).perGoodMs!];
      const sum = all.reduce((total, { ms }) => total + ms, 0);
      expect(sum).toBeCloseTo(own - other, 6);
      const { mixShare } = compareDays(first, second)!;
      if (mixShare !== null) expect(all[0]!.ms / sum).toBeCloseTo(mixShare, 6);
    }
  });

  it('names the most of what is left beside the mix, and only what goes the way of the whole', () => {
    const tapped = { done: 100, counted: 98 };
    const steps = [
      { cause: 'mix', ms: 2_000 },
      { cause: 'hands', ms: -9_000 },
      { cause: 'unaccounted', ms: 12_340 },
      { cause: 'stoppage', ms: 4_000 },
    ] as const;
    expect(mostBesideMix(steps, [tapped, tapped])).toBe('Beside the mix the most is: Unaccounted, 12.3 s.');
    const quick = [
      { cause: 'mix', ms: 9_000 },
      { cause: 'hands', ms: -700 },
    ] as const;
    expect(mostBesideMix(quick, [tapped, tapped])).toBe('');
    // Of a day that was entered afterwards nobody knows at what pace its parts were made.
    expect(mostBesideMix(steps, [tapped, { done: 240, counted: 0 }])).toMatch(/was not recorded/);
    expect(mostBesideMix(steps, [tapped, { done: 0, counted: 0 }])).not.toMatch(/was not recorded/);
  });
});
