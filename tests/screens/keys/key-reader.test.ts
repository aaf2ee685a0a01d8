import { describe, expect, it } from 'vitest';
import { isTapKey } from '../../../src/screens/keys/is-tap-key';
import { type KeyRead, KeyReader } from '../../../src/screens/keys/key-reader';

const press = (key: string, timeStamp: number) => ({ key, timeStamp });
type Press = ReturnType<typeof press>;

/** Types a text at this pace, and what was read on the way. */
function typed(reader: KeyReader<Press>, text: string, from: number, gapMs: number): KeyRead<Press>[] {
  return [...text].flatMap((key, place) => reader.type(press(key, from + place * gapMs)) ?? []);
}

describe('what keys say', () => {
  it('a code typed in one go and Enter is a scan, and no key of it a tap', () => {
    const reader = new KeyReader<Press>();
    expect(typed(reader, 'WD-1310', 0, 12)).toEqual([]);
    expect(reader.end(press('Enter', 90))).toEqual({ kind: 'scan', text: 'WD-1310' });
    expect(reader.settle()).toBeNull();
  });

  it.each([5, 20, 50, 110])(
    'a code with %i ms from key to key, its Enter as late as half a second, presses nothing',
    (gapMs) => {
      const reader = new KeyReader<Press>();
      expect(typed(reader, 'PLATE-99', 0, gapMs)).toEqual([]);
      const lastAt = 7 * gapMs;
      expect(reader.settlesAfterMs).toBeGreaterThan(500);
      expect(reader.end(press('Enter', lastAt + 500))).toEqual({ kind: 'scan', text: 'PLATE-99' });
      expect(reader.settle()).toBeNull();
    },
  );

  it('a lone key is known for a tap before anybody waits for it', () => {
    const reader = new KeyReader<Press>();
    reader.type(press('b', 0));
    expect(reader.settlesAfterMs).toBeLessThan(150);
  });

  it('a scanner without Enter at the end is understood when nothing follows', () => {
    const reader = new KeyReader<Press>();
    typed(reader, 'ABC', 0, 20);
    expect(reader.settle()).toEqual({ kind: 'scan', text: 'ABC' });
  });

  it('one letter is a code when Enter comes quicker than any finger', () => {
    const reader = new KeyReader<Press>();
    reader.type(press('M', 0));
    expect(reader.end(press('Enter', 15))).toEqual({ kind: 'scan', text: 'M' });
  });

  it('one key is a tap, at the moment at which it was pressed', () => {
    const reader = new KeyReader<Press>();
    expect(reader.type(press('b', 1_000))).toBeNull();
    expect(reader.settle()).toEqual({ kind: 'tap', press: press('b', 1_000) });
  });

  it('two keys under one glove are one tap', () => {
    const reader = new KeyReader<Press>();
    typed(reader, 'gh', 500, 30);
    expect(reader.settle()).toEqual({ kind: 'tap', press: press('g', 500) });
  });

  it('keys pressed one after the other by hand are taps, each of its own', () => {
    const reader = new KeyReader<Press>();
    const read = typed(reader, 'bbb', 0, 2_000);
    expect([...read, reader.settle()].map((each) => each?.kind)).toEqual(['tap', 'tap', 'tap']);
  });

  it('Enter with nothing before it belongs to whatever has the focus', () => {
    const reader = new KeyReader<Press>();
    expect(reader.end(press('Enter', 0))).toBeNull();
    reader.type(press('b', 1_000));
    expect(reader.end(press('Enter', 1_500))).toBeNull();
  });

  it('ten kilobytes from a scanner are one sentence, and nothing of it is a tap or a code', () => {
    const reader = new KeyReader<Press>();
    expect(typed(reader, 'x'.repeat(10_000), 0, 5)).toEqual([]);
    expect(reader.end(press('Enter', 50_001))).toEqual({ kind: 'scan-too-long' });
    typed(reader, 'M', 60_000, 5);
    expect(reader.end(press('Enter', 60_010))).toEqual({ kind: 'scan', text: 'M' });
  });
});

describe('a key that does not print', () => {
  it('is a tap when pedals send it, and not when people and browsers need it', () => {
    expect(['PageDown', 'ArrowRight', 'F7', 'F13', 'Home'].every(isTapKey)).toBe(true);
    const own = ['Tab', 'Escape', 'Shift', 'Control', 'F5', 'F12', 'AudioVolumeUp', 'BrowserBack', 'b'];
    expect(own.filter(isTapKey)).toEqual([]);
  });
});
