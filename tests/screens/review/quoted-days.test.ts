import { describe, expect, it } from 'vitest';
import { quotedDays } from '../../../src/screens/review/promises/quoted-days';

const HOUR_MS = 3_600_000;
const now = { day: '2026-03-01', minute: 1_200 };
const quoted = { totalMs: 9 * HOUR_MS, highMs: 17 * HOUR_MS };

describe('the days of a quotation', () => {
  it('are that of its time and that of the upper end of its range', () => {
    // Eight hours a day without a calendar: Thursday and Friday, then Monday.
    expect(quotedDays(null, { freeFrom: '2026-03-05', people: '1' }, quoted, now)).toEqual({
      freeFrom: '2026-03-05',
      people: 1,
      finish: '2026-03-06',
      latest: '2026-03-09',
    });
  });

  it('take half a person as half, and have no latest where no range is known', () => {
    const half = { freeFrom: '2026-03-05', people: '0,5' };
    expect(quotedDays(null, half, { totalMs: 9 * HOUR_MS, highMs: null }, now)).toMatchObject({
      finish: '2026-03-09',
      latest: null,
    });
  });

  it('are not told of nobody, nor from a day that was not typed', () => {
    expect(quotedDays(null, { freeFrom: '2026-03-05', people: '' }, quoted, now)).toBeNull();
    expect(quotedDays(null, { freeFrom: '', people: '1' }, quoted, now)).toBeNull();
  });
});
