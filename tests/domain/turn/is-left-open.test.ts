import { describe, expect, it } from 'vitest';
import { foldTurn } from '../../../src/domain/turn/fold-turn';
import { isLeftOpen } from '../../../src/domain/turn/is-left-open';
import { stampAt } from '../../support/records';
import { done, ended, type Line, turnRecords } from './turn-script';

const HOUR_S = 3_600;
// The turns of these tests begin at 07:00, so midnight is 17 hours on.
const leftOpen = (lines: readonly Line[], readAtHour: number) =>
  isLeftOpen(foldTurn(turnRecords(lines)), stampAt(readAtHour * HOUR_S * 1_000));

describe('isLeftOpen', () => {
  it('asks about a turn that nobody touched since the day before', () => {
    // Last tap at 15:00, read at 07:00 the next day.
    expect(leftOpen([[8 * HOUR_S, done()]], 24)).toBe(true);
  });

  it('asks nothing on the same day, however long the turn was left', () => {
    // Last tap at 07:30, read at 23:00.
    expect(leftOpen([[0.5 * HOUR_S, done()]], 16)).toBe(false);
  });

  it('asks nothing of a night shift whose part lasts past midnight', () => {
    // Last tap at 23:50, read at 00:10.
    expect(leftOpen([[16 * HOUR_S + 3_000, done()]], 17 + 1 / 6)).toBe(false);
  });

  it('is not deceived by a sleep that the tablet noted by itself in the morning', () => {
    expect(
      leftOpen(
        [
          [8 * HOUR_S, done()],
          [24 * HOUR_S, { kind: 'slept', sleptMs: 0 }],
        ],
        24,
      ),
    ).toBe(true);
  });

  it('asks nothing about a turn that has ended', () => {
    expect(leftOpen([[8 * HOUR_S, ended]], 24)).toBe(false);
  });
});
