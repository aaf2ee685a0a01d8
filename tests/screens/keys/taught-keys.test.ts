import { describe, expect, it } from 'vitest';
import type { Jotter } from '../../../src/application/ports/jotter';
import { keyName } from '../../../src/screens/keys/key-name';
import { taughtKey, teachKey } from '../../../src/screens/keys/use-learned-keys';

function jotter(): Jotter {
  const notes = new Map<string, string>();
  return {
    read: (name) => notes.get(name) ?? null,
    write(name, text) {
      if (text === null) notes.delete(name);
      else notes.set(name, text);
    },
  };
}

describe('a key that is taught', () => {
  it('is refused where it taps the other place already, and the key before it stays', () => {
    const notes = jotter();
    expect(teachKey(notes, 'surface', 'KeyA')).toBe(true);
    expect(teachKey(notes, 'machine', 'KeyB')).toBe(true);
    expect(teachKey(notes, 'surface', 'KeyB')).toBe(false);
    expect(taughtKey(notes)).toBe('KeyA');
    expect(teachKey(notes, 'surface', 'KeyA')).toBe(true);
  });

  it('goes by what stands on it', () => {
    expect(['KeyB', 'Digit1', 'PageDown', 'F7', 'Numpad3'].map(keyName)).toEqual([
      'B',
      '1',
      'PageDown',
      'F7',
      'Numpad3',
    ]);
  });
});
