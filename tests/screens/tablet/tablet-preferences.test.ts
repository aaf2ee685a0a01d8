import { beforeEach, describe, expect, it } from 'vitest';
import type { Jotter } from '../../../src/application/ports/jotter';
import { asDelivered, tabletPreferences } from '../../../src/screens/tablet/tablet-preferences';

function jotterWith(text: string | null): Jotter & { kept: Map<string, string> } {
  const kept = new Map<string, string>(text === null ? [] : [['tablet', text]]);
  return {
    kept,
    read: (name) => kept.get(name) ?? null,
    write: (name, value) => (value === null ? kept.delete(name) : kept.set(name, value)),
  };
}

describe('the preferences of a tablet', () => {
  const dataset: Record<string, string> = {};
  beforeEach(() => {
    Object.assign(globalThis, { document: { documentElement: { dataset } } });
  });

  it('are, on a new one, paper, the right hand, and neither sound nor vibration', () => {
    expect(tabletPreferences(jotterWith(null)).value).toEqual({
      theme: 'paper',
      hand: 'right',
      sound: false,
      vibration: false,
      anyKey: true,
      isKept: false,
    });
  });

  it('are there again after a reload, and the page wears them', () => {
    const jotter = jotterWith(null);
    const first = tabletPreferences(jotter);
    first.value = { ...first.value, theme: 'dim', hand: 'left' };
    expect(dataset).toEqual({ theme: 'dim', hand: 'left' });
    expect(tabletPreferences(jotterWith(jotter.kept.get('tablet')!)).value).toMatchObject({
      theme: 'dim',
      hand: 'left',
    });
  });

  it('are as delivered where what was kept cannot be read', () => {
    expect(tabletPreferences(jotterWith('{"theme":')).value).toEqual(asDelivered);
    expect(tabletPreferences(jotterWith('{"sound":true}')).value).toEqual({ ...asDelivered, sound: true });
  });
});
