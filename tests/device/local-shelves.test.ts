import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { localLastSeen } from '../../src/device/local-last-seen';
import { localReserve } from '../../src/device/local-reserve';
import { recordAt } from '../support/records';

const done = { kind: 'part-done', part: 't:1', partCode: 'M', targetMs: 90_000 } as const;
const held = new Map<string, string>();

beforeEach(() => {
  held.clear();
  vi.stubGlobal('localStorage', {
    getItem: (name: string) => held.get(name) ?? null,
    setItem: (name: string, text: string) => held.set(name, text),
    removeItem: (name: string) => held.delete(name),
  });
});
afterEach(() => {
  vi.unstubAllGlobals();
});

describe('the reserve', () => {
  it('holds five hundred taps and more at once, and gives them back as they were', () => {
    const taps = Array.from({ length: 1_000 }, (_, place) => recordAt(place + 1, place * 1_000, 't:2', done));
    expect(localReserve.hold(taps)).toBe(true);
    expect(localReserve.read()).toEqual(taps);
    expect([...held.values()].join('').length).toBeLessThan(1_000_000);
  });

  it('says so when it has no room, and keeps what it held', () => {
    const few = [recordAt(1, 0, 't:2', done)];
    localReserve.hold(few);
    const many = Array.from({ length: 10_000 }, (_, place) => recordAt(place + 1, place, 't:2', done));
    expect(localReserve.hold(many)).toBe(false);
    expect(localReserve.read()).toEqual(few);
  });

  it('is empty where it was never used, or cannot be read', () => {
    expect(localReserve.read()).toEqual([]);
    localReserve.hold([recordAt(1, 0, 't:2', done)]);
    for (const name of held.keys()) held.set(name, '[{"device":');
    expect(localReserve.read()).toEqual([]);
  });
});

describe('what was last seen', () => {
  it('is given back, also when it was nothing', () => {
    expect(localLastSeen.read()).toBeNull();
    for (const seen of [
      { records: 1_204, missing: 0 },
      { records: 0, missing: 1_204 },
    ]) {
      for (const device of ['tablet-7k', '__proto__', '"a,b']) {
        const all = new Map([[device, seen] as const, ['other', { records: 1, missing: 1 }] as const]);
        localLastSeen.set(all);
        expect(localLastSeen.read()).toEqual(all);
      }
    }
  });

  it('is a total of all tablets where an older release left it', () => {
    held.set('pacewright-last-seen', '1204 3');
    expect(localLastSeen.read()).toEqual(new Map([['', { records: 1_204, missing: 3 }]]));
  });

  it('is nothing where it cannot be read or the browser refuses', () => {
    for (const text of ['', 'many few', '12', '-3 0', 't:1', 't:1:', 't:1:2 b', 't:-1:0']) {
      held.set('pacewright-last-seen', text);
      expect(localLastSeen.read(), text).toBeNull();
    }
    vi.stubGlobal('localStorage', {
      getItem() {
        throw new DOMException('refused', 'SecurityError');
      },
    });
    expect(localLastSeen.read()).toBeNull();
    expect(localReserve.read()).toEqual([]);
  });
});
