import { describe, expect, it } from 'vitest';
import { mondayOf } from '../../../src/domain/weeks/monday-of';

describe('the Monday of a week', () => {
  it('is the same for its seven days, and another one for the next', () => {
    const week = ['2026-12-28', '2026-12-31', '2027-01-01', '2027-01-03'];
    expect(new Set(week.map(mondayOf))).toEqual(new Set(['2026-12-28']));
    expect(mondayOf('2027-01-04')).toBe('2027-01-04');
  });
});
