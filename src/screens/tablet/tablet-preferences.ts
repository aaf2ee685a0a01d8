import { effect, type Signal, signal } from '@preact/signals';
import type { Jotter } from '../../application/ports/jotter';

/** How this tablet looks and answers. It is the tablet's own: no record, and no other tablet's business. */
export interface TabletPreferences {
  /** Paper for a shop, sun for a place by the door, dim for a hall with the lights down. */
  readonly theme: 'paper' | 'sun' | 'dim';
  /** The hand that taps. */
  readonly hand: 'right' | 'left';
  /** Beside what is seen, never instead of it. */
  readonly sound: boolean;
  readonly vibration: boolean;
  /** Any key that nothing else needs is a tap; otherwise only the one that was taught, Enter and Space. */
  readonly anyKey: boolean;
  /** Only Pace is open until the supervisor's PIN is given. */
  readonly isKept: boolean;
}

export const asDelivered: TabletPreferences = {
  theme: 'paper',
  hand: 'right',
  sound: false,
  vibration: false,
  anyKey: true,
  isKept: false,
};

/** DO NOT RENAME: tablets have their preferences under it. */
const PLACE = 'tablet';

/** The preferences as they were left, written down again with every change, and worn by the page. */
export function tabletPreferences(jotter: Jotter): Signal<TabletPreferences> {
  const preferences = signal({ ...asDelivered, ...left(jotter.read(PLACE)) });
  effect(() => {
    const { theme, hand } = preferences.value;
    Object.assign(document.documentElement.dataset, { theme, hand });
    jotter.write(PLACE, JSON.stringify(preferences.value));
  });
  return preferences;
}

function left(text: string | null): Partial<TabletPreferences> {
  try {
    return JSON.parse(text ?? '{}');
  } catch {
    return {};
  }
}
