import { describe, expect, it } from 'vitest';
import { plannedTime, timeOfDay } from '../../../src/screens/pace/time-of-day';
import { stampAt } from '../../support/records';

describe('a time of a plan or a forecast', () => {
  it('is the whole minute that was meant, where two clocks part by a hair', () => {
    const startedAt = { ...stampAt(0), wallMs: Date.UTC(2026, 10, 26, 8, 0, 12, 345), offsetMin: 60 };
    const endsAtMs = Date.UTC(2026, 10, 26, 13, 0) - startedAt.wallMs;
    for (const hairMs of [-400, -1, 0, 1, 400]) {
      expect(plannedTime({ startedAt }, endsAtMs + hairMs)).toBe('14:00');
    }
    expect(timeOfDay({ ...startedAt, wallMs: startedAt.wallMs + endsAtMs - 1 })).toBe('13:59');
  });
});
