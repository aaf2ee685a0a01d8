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

/**
 * Speaks the language that was chosen, else the first of the browser's that is known. English needs nothing, and it
 * is what is spoken when a language cannot be brought.
 */
export async function speakLanguage(chosen: string | null, wishes: readonly string[]): Promise<void> {
  const known = [chosen ?? '', ...wishes.map((wish) => wish.slice(0, 2))].find(
    (id) => id === 'en' || Object.hasOwn(tongues, id),
  );
  const bring = tongues[known ?? ''];
  if (!bring) return;
  const late = new Promise<null>((give) => setTimeout(give, PATIENCE_MS, null));
  const brought = await Promise.race([bring(), late]).catch(() => null);
  if (!brought) return;
  const { locale, direction, translation } = brought.tongue;
  speak(translation, locale);
  Object.assign(document.documentElement, { lang: locale, dir: direction });
}
