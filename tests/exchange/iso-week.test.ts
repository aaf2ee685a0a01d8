import { afterEach, expect, it } from 'vitest';
import { isoWeek } from '../../src/exchange/iso-week';

const zone = process.env.TZ;
afterEach(() => {
  if (zone === undefined) delete process.env.TZ;
  else process.env.TZ = zone;
});

// ISO 8601 itself: 2008-12-29 is in week 1 of 2009, 2010-01-03 in week 53 of 2009.
it('the week of a day is that of its Thursday, wherever the tablet stands', () => {
  for (const place of ['UTC', 'Pacific/Kiritimati', 'Pacific/Pago_Pago', 'America/Sao_Paulo']) {
    process.env.TZ = place;
    expect(isoWeek('2008-12-29')).toBe('2009-W01');
    expect(isoWeek('2010-01-03')).toBe('2009-W53');
    expect(isoWeek('2026-03-27')).toBe('2026-W13');
    expect(isoWeek('2027-01-03')).toBe('2026-W53');
  }
});
