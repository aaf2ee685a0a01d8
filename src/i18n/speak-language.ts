import { speak } from './spoken';
import type { Tongue } from './tongue';

/** Each in a script of its own. English is in every screen already. */
const tongues: Record<string, () => Promise<{ tongue: Tongue }>> = {
  de: () => import('./german'),
  es: () => import('./spanish'),
  pseudo: () => import('./pseudo'),
};

/** Words that take longer than this must keep nobody from tapping. */
const PATIENCE_MS = 2_000;

/** The first language that was asked for and whose words could not be brought; null where none was. */
export let unspoken: string | null = null;

/**
 * Speaks the language that was chosen, else the first of the browser's that is known and whose words can be brought.
 * English needs nothing, and it is what is spoken when none can.
 */
export async function speakLanguage(chosen: string | null, wishes: readonly string[]): Promise<void> {
  for (const id of [chosen ?? '', ...wishes.map((wish) => wish.slice(0, 2))]) {
    if (id === 'en') return;
    if (!Object.hasOwn(tongues, id)) continue;
    const late = new Promise<null>((give) => setTimeout(give, PATIENCE_MS, null));
    const brought = await Promise.race([tongues[id]!(), late]).catch(() => null);
    if (brought) {
      const { locale, direction, translation } = brought.tongue;
      speak(translation, locale);
      Object.assign(document.documentElement, { lang: locale, dir: direction });
      return;
    }
    unspoken ??= id;
  }
}
