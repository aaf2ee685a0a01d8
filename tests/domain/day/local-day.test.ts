import { describe, expect, it } from 'vitest';
import { localDay } from '../../../src/domain/day/local-day';
import { MORNING_MS } from '../../support/records';

describe('the day of a moment', () => {
  it('is that of the clock where it happened', () => {
    // 07:00 one hour east of UTC: 16.5 h later it is 23:30, 17.5 h later 00:30 of the next day there and still
    // the evening of 2 March in UTC.
    const after = (hours: number) => localDay({ wallMs: MORNING_MS + hours * 3_600_000, offsetMin: 60 });
    expect([0, 16.5, 17.5].map(after)).toEqual(['2026-03-02', '2026-03-02', '2026-03-03']);
  });
});
