import { signal } from '@preact/signals';
import type { ScreenName } from '../route';

/** The way through the demo shop was asked for or put away since the page was opened; null: neither. */
export const guideShown = signal<boolean | null>(null);

/** In the jotter: it was put away here. */
export const GUIDE_PLACE = 'guide-away';

/** The screens that answer a question of the three people. */
export const askedScreens = ['pace', 'study', 'cell', 'review'] as const;

export function isAsked(screen: ScreenName): screen is (typeof askedScreens)[number] {
  return askedScreens.some((name) => name === screen);
}
