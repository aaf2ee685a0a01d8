import type { Presence } from '../application/ports/presence';

export function pagePresence(): Presence {
  let lastMs = performance.now();
  const note = (event: Event) => {
    lastMs = event.timeStamp;
  };
  for (const kind of ['pointerdown', 'keydown'])
    addEventListener(kind, note, { capture: true, passive: true });
  return { idleMs: () => performance.now() - lastMs };
}
