import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { attendedSpans } from '../../../src/domain/day/attended-spans';
import { anyTurn } from './random-day';
import { done, turnOf } from './turn-of-day';

const at = (fromS: number, toS: number) => ({ fromMs: fromS * 1_000, toMs: toS * 1_000 });
const lengthS = (spans: readonly { fromMs: number; toMs: number }[]) =>
  spans.reduce((sum, { fromMs, toMs }) => sum + (toMs - fromMs) / 1_000, 0);

/** An hour of work, a tap every 10 minutes. */
const hour = turnOf([600, 1_200, 1_800, 2_400, 3_000, 3_600].map((atS) => [atS, done()]));

describe('attended time', () => {
  it('is the whole turn in a shop without a calendar', () => {
    expect(lengthS(attendedSpans(hour, []))).toBe(3_600);
  });

  it('leaves a meal of half an hour out, also where it begins in mid-cycle', () => {
    const spans = attendedSpans(hour, [at(700, 2_500)]);
    expect(lengthS(spans)).toBe(1_800);
    expect(spans.every(({ isWorking }) => isWorking)).toBe(true);
  });

  it('keeps a shorter rest, which is no working time', () => {
    const spans = attendedSpans(hour, [at(700, 1_300)]);
    expect(lengthS(spans)).toBe(3_600);
    expect(lengthS(spans.filter(({ isWorking }) => !isWorking))).toBe(600);
  });

  it('takes the shop at its word: a long rest that counts is attended, a short meal that does not is out', () => {
    expect(lengthS(attendedSpans(hour, [{ ...at(700, 2_500), isAttended: true }]))).toBe(3_600);
    expect(lengthS(attendedSpans(hour, [{ ...at(700, 1_300), isAttended: false }]))).toBe(3_000);
  });

  it('ends at a meal that the turn ran into, and at one that it began in', () => {
    expect(lengthS(attendedSpans(hour, [at(3_500, 6_000)]))).toBe(3_500);
    expect(lengthS(attendedSpans(hour, [at(-1_800, 100)]))).toBe(3_500);
  });

  it('never is longer than the turn, has no negative stretch, and keeps the order', () => {
    fc.assert(
      fc.property(
        anyTurn(),
        fc.array(fc.tuple(fc.nat(30_000), fc.integer({ min: 1, max: 5_000 })), { maxLength: 3 }),
        ({ turn }, breaks) => {
          const spans = attendedSpans(
            turn,
            breaks.map(([fromS, long]) => at(fromS, fromS + long)),
          );
          expect(lengthS(spans)).toBeLessThanOrEqual(turn.lastAtMs / 1_000);
          for (const [place, { fromMs, toMs }] of spans.entries()) {
            expect(toMs).toBeGreaterThanOrEqual(fromMs);
            expect(fromMs).toBeGreaterThanOrEqual(spans[place - 1]?.toMs ?? 0);
          }
        },
      ),
      { numRuns: 60 },
    );
  });
});
