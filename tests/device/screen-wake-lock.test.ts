import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { screenWakeLock } from '../../src/device/screen-wake-lock';

/** A lock of the system, which may take it back. */
class Lock extends EventTarget {
  async release() {
    this.dispatchEvent(new Event('release'));
  }
}

let page: EventTarget & { visibilityState: string };
let locks: Lock[];
let isRefused: boolean;

beforeEach(() => {
  page = Object.assign(new EventTarget(), { visibilityState: 'visible' });
  locks = [];
  isRefused = false;
  vi.stubGlobal('document', page);
  vi.stubGlobal('navigator', {
    wakeLock: {
      async request() {
        if (isRefused) throw new DOMException('battery low', 'NotAllowedError');
        const lock = new Lock();
        locks.push(lock);
        return lock;
      },
    },
  });
});
afterEach(() => {
  vi.unstubAllGlobals();
});

const settled = () => new Promise((resolve) => setTimeout(resolve, 0));
const seen = (state: string) => {
  page.visibilityState = state;
  page.dispatchEvent(new Event('visibilitychange'));
};

async function kept() {
  const told: boolean[] = [];
  const awake = screenWakeLock();
  awake.onChange((is) => told.push(is));
  awake.keep();
  await settled();
  return { awake, told };
}

describe('the lock that keeps the screen on', () => {
  it('is asked for when timing begins, and that it is held is told', async () => {
    const { told } = await kept();
    expect(locks).toHaveLength(1);
    expect(told).toEqual([true]);
  });

  it('that is refused, or not there at all, is told at once', async () => {
    isRefused = true;
    expect((await kept()).told).toEqual([false]);
    vi.stubGlobal('navigator', {});
    expect((await kept()).told).toEqual([false]);
  });

  it('that the system takes back is told, and asked for again when the page is seen again', async () => {
    const { told } = await kept();
    page.visibilityState = 'hidden';
    await locks[0]!.release();
    expect(told).toEqual([true, false]);
    seen('visible');
    await settled();
    expect(locks).toHaveLength(2);
    expect(told).toEqual([true, false, true]);
  });

  it('is given back when nothing is timed any more, and not asked for again', async () => {
    const { awake, told } = await kept();
    awake.release();
    await settled();
    seen('visible');
    await settled();
    expect(locks).toHaveLength(1);
    expect(told).not.toContain(false);
  });
});
