import { useEffect, useRef, useState } from 'preact/hooks';
import type { Jotter } from '../../application/ports/jotter';
import type { Stamp } from '../../domain/records/stamp';
import { useApp } from '../app';

/** What a key may do while timing; a pedal is a key to the tablet. */
export type KeyAct = 'surface' | 'machine';

/** DO NOT RENAME: tablets have their pedal's key under these. */
const places: Record<KeyAct, string> = { surface: 'study-key', machine: 'study-key-machine' };

/** The key or pedal that taps the surface; null while none was taught. */
export function taughtKey(jotter: Jotter): string | null {
  return jotter.read(places.surface);
}

/** Gives an act its key. One key for both would only ever tap one of them, so it is refused where the other has it. */
export function teachKey(jotter: Jotter, act: KeyAct, key: string): boolean {
  const isFree = jotter.read(places[act === 'surface' ? 'machine' : 'surface']) !== key;
  if (isFree) jotter.write(places[act], key);
  return isFree;
}

/** The keys a person taught this tablet, and how to teach it another one: the next key pressed is it. */
export function useKeyLearning() {
  const { jotter } = useApp();
  const [learning, setLearning] = useState<KeyAct | null>(null);
  const [refused, setRefused] = useState<KeyAct | null>(null);
  useEffect(() => {
    if (learning === null) return;
    const learn = (event: KeyboardEvent) => {
      event.preventDefault();
      event.stopPropagation();
      const isTaught = event.key === 'Escape' || teachKey(jotter, learning, event.code || event.key);
      setRefused(isTaught ? null : learning);
      setLearning(null);
    };
    // Before anything that listens on the page: a key that is taught does nothing else.
    addEventListener('keydown', learn, true);
    return () => removeEventListener('keydown', learn, true);
  }, [jotter, learning]);
  return { learning, refused, learn: setLearning, keyOf: (act: KeyAct) => jotter.read(places[act]) };
}

/**
 * Lets the learned keys act, wherever the focus is but in a field that is written in, and before any button takes them.
 * Enter and Space that no button took go to the surface too, so that a pedal nobody taught is not lost.
 */
export function useLearnedKeys(acts: Record<KeyAct, ((at: Stamp) => void) | null>): void {
  const { bench, jotter, isReadOnly } = useApp();
  const latest = useRef(acts);
  latest.current = acts;
  useEffect(() => {
    const known = { surface: jotter.read(places.surface), machine: jotter.read(places.machine) };
    const onKeyDown = (event: KeyboardEvent) => {
      const name = event.code || event.key;
      const isStray = event.target === document.body && (event.key === 'Enter' || event.key === ' ');
      const act = known.machine === name ? 'machine' : known.surface === name || isStray ? 'surface' : null;
      // A key that types belongs to what is being written.
      const isTyped =
        event.target instanceof HTMLInputElement && (event.key.length === 1 || event.key === 'Enter');
      if (!act || isReadOnly || isTyped) return;
      event.preventDefault();
      event.stopPropagation();
      if (!event.repeat) latest.current[act]?.(bench.clock.stampOf(event));
    };
    document.addEventListener('keydown', onKeyDown, true);
    return () => document.removeEventListener('keydown', onKeyDown, true);
  }, [bench, jotter, isReadOnly]);
}
