import { afterEach, describe, expect, it, vi } from 'vitest';

/** A fresh copy of the words and formats: what is spoken is spoken for good in one page. */
async function inPage() {
  vi.resetModules();
  return import('../../src/i18n/spoken');
}

afterEach(() => vi.resetModules());

describe('words', () => {
  it('are said in the other language in the object a screen holds already, and in one that comes later', async () => {
    const { spoken, speak } = await inPage();
    const early = spoken('early', { stop: 'Stop', go: 'Go' });
    speak((name) => ({ early: { stop: 'Stopp', go: 'Los' }, late: { saved: 'Gesichert' } })[name], 'de-DE');
    const late = spoken('late', { saved: 'Saved' });
    expect([early, late]).toEqual([{ stop: 'Stopp', go: 'Los' }, { saved: 'Gesichert' }]);
  });

  it('are said in a group and a list that a screen took out before', async () => {
    const { spoken, speak } = await inPage();
    const { ways, heads } = spoken('cell', { ways: { batch: 'Batch' }, heads: ['No.', 'Step'] });
    speak(() => ({ ways: { batch: 'Los' }, heads: ['Nr.', 'Schritt'] }), 'de-DE');
    expect([ways, heads]).toEqual([{ batch: 'Los' }, ['Nr.', 'Schritt']]);
  });

  it('stay English where a language has none', async () => {
    const { spoken, speak } = await inPage();
    speak(() => undefined, 'es-ES');
    expect(spoken('other', { saved: 'Saved' })).toEqual({ saved: 'Saved' });
  });
});

describe('numbers, days and ages', () => {
  it.each([
    ['en-GB', '−1,234.50', '1,234', 'Mon 2 March 2026', '3 days ago', 'now'],
    ['de-DE', '−1.234,50', '1.234', 'Mo. 2. März 2026', 'vor 3 Tagen', 'jetzt'],
    ['es-ES', '−1.234,50', '1.234', 'lun 2 de marzo de 2026', 'hace 3 días', 'ahora'],
  ])('are written as %s writes them', async (locale, amount, count, day, age, now) => {
    const { speak } = await inPage();
    speak(() => undefined, locale);
    const { formatNumber } = await import('../../src/i18n/format-number');
    const { formatDay } = await import('../../src/i18n/format-day');
    const { formatAge } = await import('../../src/i18n/format-age');
    expect(formatNumber(-1_234.5, 2)).toBe(amount);
    expect(formatNumber(1_234)).toBe(count);
    expect(formatDay('2026-03-02')).toBe(day);
    expect(formatAge(3 * 86_400_000 + 5)).toBe(age);
    expect(formatAge(59_999)).toBe(now);
  });

  it('keep a clock face as it is, but for the mark before its tenths', async () => {
    const { speak } = await inPage();
    speak(() => undefined, 'de-DE');
    const { roundedClockFace } = await import('../../src/i18n/rounded-clock-face');
    expect([roundedClockFace(90_804), roundedClockFace(7_440)]).toEqual(['1:31', '0:07,4']);
  });
});
