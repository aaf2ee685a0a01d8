import { beforeEach, describe, expect, it, vi } from 'vitest';

const page = { lang: 'en', dir: '' };

/** What the page speaks after this choice with these wishes of the browser. */
async function spokenAfter(chosen: string | null, wishes: string[]) {
  const { speakLanguage } = await import('../../src/i18n/speak-language');
  await speakLanguage(chosen, wishes);
  return (await import('../../src/i18n/spoken')).locale;
}

beforeEach(() => {
  vi.resetModules();
  vi.stubGlobal('document', { documentElement: Object.assign(page, { lang: 'en', dir: '' }) });
});

describe('the language', () => {
  it('is the one that was chosen, whatever the browser wishes', async () => {
    expect(await spokenAfter('de', ['es-ES'])).toBe('de-DE');
    expect(page).toEqual({ lang: 'de-DE', dir: 'ltr' });
  });

  it('is English where that was chosen, and the page is left alone', async () => {
    expect(await spokenAfter('en', ['de-DE'])).toBe('en-GB');
    expect(page).toEqual({ lang: 'en', dir: '' });
  });

  it('is the first of the browser’s that is known, of any country', async () => {
    expect(await spokenAfter(null, ['fr-CH', 'es-MX', 'de'])).toBe('es-ES');
  });

  it('is English where none is known, and where what was kept makes no sense', async () => {
    expect(await spokenAfter(null, ['fr', 'it'])).toBe('en-GB');
    expect(await spokenAfter('toString', [])).toBe('en-GB');
  });

  it('is English where the words cannot be brought', async () => {
    vi.doMock('../../src/i18n/german', () => {
      throw new Error('offline');
    });
    expect(await spokenAfter('de', [])).toBe('en-GB');
    vi.doUnmock('../../src/i18n/german');
  });

  it('is offered under its own name with the locale it brings', async () => {
    const { languages } = await import('../../src/i18n/languages');
    for (const { id, locale } of languages) {
      vi.resetModules();
      expect(await spokenAfter(id, [])).toBe(locale);
    }
  });
});
