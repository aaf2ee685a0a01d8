import { describe, expect, it } from 'vitest';
import { meanTarget } from '../../../src/domain/day/mean-target';
import { reviewDay } from '../../../src/domain/day/review-day';
import { done, partM, partV, turnOf } from './turn-of-day';

/** A day of some parts of M (target 90 s) and of V (target 130 s), each a minute after the one before. */
const dayOf = (day: string, ms: number, vs: number) =>
  reviewDay(day, [
    turnOf(
      Array.from({ length: ms + vs }, (_, place) => [60 * (place + 1), done(place < ms ? partM : partV)]),
    ),
  ]);
const fiveDays = [3, 4, 5, 6, 9].map((day) => dayOf(`2026-03-0${day}`, 1, 1));

describe('meanTarget', () => {
  it('calls a day of large parts a harder one, and a day of small parts an easier one', () => {
    // Usual: (90 + 130)/2 = 110 s. One M and three V: (90 + 390)/4 = 120 s, 9 % more; M alone 90 s, 18 % less.
    expect(meanTarget(dayOf('2026-03-10', 1, 3), fiveDays)).toEqual({
      meanMs: 120_000,
      usualMs: 110_000,
      side: 'harder',
    });
    expect(meanTarget(dayOf('2026-03-10', 2, 0), fiveDays)?.side).toBe('easier');
    expect(meanTarget(dayOf('2026-03-10', 2, 2), fiveDays)?.side).toBe('usual');
  });

  it('is not moved by how long the parts took', () => {
    const slow = reviewDay('2026-03-10', [
      turnOf([
        [900, done()],
        [1_900, done(partV)],
      ]),
    ]);
    expect(meanTarget(slow, fiveDays)).toMatchObject({ meanMs: 110_000, side: 'usual' });
  });

  it('is that of the good parts: a scrapped one makes no day easier', () => {
    // Records: 1 start, 2 and 3 parts done, 4 the second is scrap.
    const scrapped = reviewDay('2026-03-10', [
      turnOf([
        [90, done()],
        [180, done(partV)],
        [190, { kind: 'part-judged', partDone: 't:3', outcome: 'scrap', defect: '' }],
      ]),
    ]);
    expect(meanTarget(scrapped, fiveDays)?.meanMs).toBe(90_000);
  });

  it('knows no rule from fewer than five other days, the day itself left out', () => {
    const day = fiveDays[0]!;
    expect(meanTarget(day, fiveDays)).toBeNull();
    expect(meanTarget(reviewDay('2026-03-10', []), fiveDays)).toBeNull();
  });
});
