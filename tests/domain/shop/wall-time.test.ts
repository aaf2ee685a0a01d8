import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { offsetMin, wallTime } from '../../../src/domain/shop/wall-time';

const at = (day: string, clock: string, zone: string) => {
  const [hours, minutes] = clock.split(':').map(Number) as [number, number];
  return new Date(wallTime(day, hours * 60 + minutes, zone)).toISOString();
};

describe('wallTime', () => {
  it('is the moment at which the wall clock of a zone shows that time', () => {
    expect(at('2026-03-02', '07:00', 'Europe/Berlin')).toBe('2026-03-02T06:00:00.000Z');
    expect(at('2026-07-01', '07:00', 'Europe/Berlin')).toBe('2026-07-01T05:00:00.000Z');
    expect(at('2026-03-02', '07:00', 'America/New_York')).toBe('2026-03-02T12:00:00.000Z');
    // Nepal is 5 h 45 min ahead, Newfoundland 3 h 30 min behind in winter.
    expect(at('2026-03-02', '07:00', 'Asia/Kathmandu')).toBe('2026-03-02T01:15:00.000Z');
    expect(at('2026-03-02', '07:00', 'America/St_Johns')).toBe('2026-03-02T10:30:00.000Z');
  });

  it('goes on past midnight', () => {
    expect(at('2026-03-02', '30:00', 'Europe/Berlin')).toBe('2026-03-03T05:00:00.000Z');
  });

  it('puts a time that clocks skip as long after the change as it lies past it', () => {
    // On 29 March 2026 the clocks of Berlin go from 02:00 to 03:00, at 01:00 UTC.
    expect(at('2026-03-29', '01:59', 'Europe/Berlin')).toBe('2026-03-29T00:59:00.000Z');
    expect(at('2026-03-29', '02:30', 'Europe/Berlin')).toBe('2026-03-29T01:30:00.000Z');
    expect(at('2026-03-29', '03:00', 'Europe/Berlin')).toBe('2026-03-29T01:00:00.000Z');
    // On 8 March 2026 those of New York do, at 07:00 UTC.
    expect(at('2026-03-08', '02:30', 'America/New_York')).toBe('2026-03-08T07:30:00.000Z');
  });

  it('takes the first of two when a time occurs twice', () => {
    // On 25 October 2026 the clocks of Berlin go from 03:00 back to 02:00, at 01:00 UTC.
    expect(at('2026-10-25', '02:30', 'Europe/Berlin')).toBe('2026-10-25T00:30:00.000Z');
    expect(at('2026-10-25', '03:00', 'Europe/Berlin')).toBe('2026-10-25T02:00:00.000Z');
  });

  it('makes a night shift from 22:00 to 06:00 seven or nine hours long when the clocks change in it', () => {
    const hours = (day: string) =>
      (wallTime(day, 30 * 60, 'Europe/Berlin') - wallTime(day, 22 * 60, 'Europe/Berlin')) / 3_600_000;
    expect([hours('2026-03-28'), hours('2026-10-24'), hours('2026-03-02')]).toEqual([7, 9, 8]);
  });

  it('is shown by the clock again, on any day and in any zone, except for what clocks skip', () => {
    const zones = ['Europe/Berlin', 'America/New_York', 'Asia/Kathmandu', 'Australia/Lord_Howe', 'UTC'];
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 3_650 }),
        fc.integer({ min: 0, max: 1_439 }),
        fc.constantFrom(...zones),
        (days, minute, zone) => {
          const dayMs = Date.UTC(2020, 0, 1) + days * 86_400_000;
          const wallMs = wallTime(new Date(dayMs).toISOString().slice(0, 10), minute, zone);
          const shown = wallMs + offsetMin(wallMs, zone) * 60_000;
          const skippedMs = shown - (dayMs + minute * 60_000);
          // Lord Howe moves its clocks by half an hour.
          expect([0, 1_800_000, 3_600_000]).toContain(skippedMs);
          if (minute < 60 || minute > 240) expect(skippedMs).toBe(0);
        },
      ),
    );
  });

  it('refuses a zone that does not exist', () => {
    expect(() => wallTime('2026-03-02', 0, 'Nowhere/Land')).toThrow(RangeError);
  });
});
