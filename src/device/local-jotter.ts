import type { Jotter } from '../application/ports/jotter';

/** In localStorage. A browser that refuses it keeps nothing over a reload. */
export function localJotter(shop: string): Jotter {
  const place = (name: string) => `${shop}-${name}`;
  return {
    read(name) {
      try {
        return localStorage.getItem(place(name));
      } catch {
        return null;
      }
    },
    write(name, text) {
      try {
        if (text === null) localStorage.removeItem(place(name));
        else localStorage.setItem(place(name), text);
      } catch {
        // What is on the screen stays there.
      }
    },
  };
}
