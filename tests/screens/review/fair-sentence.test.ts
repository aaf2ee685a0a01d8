import { describe, expect, it } from 'vitest';
import { compareDays } from '../../../src/domain/day/compare-days';
import { type DaySummary, summariseDay } from '../../../src/domain/day/summarise-day';
import { fairSentence } from '../../../src/screens/review/day/fair-sentence';

/** A day with these minutes attended, and earned, over a hundred good parts. */
const day = (attendedMin: number, earnedMin: number): DaySummary => ({
  ...summariseDay('2026-03-02', [], null),
  good: 100,
  attendedMs: attendedMin * 60_000,
  earnedMs: earnedMin * 60_000,
});
const said = (own: DaySummary, other: DaySummary) => fairSentence(compareDays(own, other)!, 'Friday');

describe('a day beside another, in words', () => {
  it('says how much of the difference is the mix', () => {
    expect(said(day(200, 180), day(150, 140))).toBe(
      'A good part took 2:00, 33 % more than on Friday. 87 % of that is the mix of parts.',
    );
    expect(said(day(150, 140), day(200, 180))).toBe(
      'A good part took 1:30, 25 % less than on Friday. 87 % of that is the mix of parts.',
    );
  });

  it('never says that more than all of it is the mix, nor less than nothing', () => {
    expect(said(day(200, 200), day(150, 140))).toContain('the mix alone would make more of a difference');
    expect(said(day(200, 130), day(150, 140))).toContain('the mix would have asked for the opposite');
  });

  it('says of days that are alike that they are, and makes no share of nothing', () => {
    expect(said(day(150, 140), day(150, 130))).toBe('A good part took 1:30 on both days.');
  });
});
