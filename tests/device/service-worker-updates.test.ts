import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';

const worker = vi.hoisted(() => ({ heard: new Map<string, () => void>(), asked: [] as string[] }));

vi.mock('workbox-window', () => ({
  Workbox: class {
    addEventListener(kind: string, call: () => void) {
      worker.heard.set(kind, call);
    }
    async register() {
      worker.asked.push('register');
    }
    async update() {
      worker.asked.push('update');
    }
    messageSkipWaiting() {
      worker.asked.push('skip waiting');
    }
  },
}));

const page = Object.assign(new EventTarget(), { visibilityState: 'hidden' });
let reloads = 0;
const told: unknown[] = [];
const active = { postMessage: (message: unknown) => told.push(message) };

let isTimed = false;

async function opened() {
  const { serviceWorkerUpdates } = await import('../../src/device/service-worker-updates');
  return serviceWorkerUpdates('de', () => isTimed);
}

beforeEach(() => {
  vi.useFakeTimers();
  worker.heard.clear();
  worker.asked.length = 0;
  reloads = 0;
  isTimed = false;
  vi.stubGlobal('document', page);
  vi.stubGlobal('navigator', { serviceWorker: { ready: Promise.resolve({ active }) } });
  vi.stubGlobal('location', {
    reload() {
      reloads += 1;
    },
  });
});
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

describe('the page’s side of the service worker', () => {
  it('looks for a newer release whenever the page is seen again, and every six hours', async () => {
    await opened();
    expect(worker.asked).toEqual(['register']);
    page.dispatchEvent(new Event('visibilitychange'));
    expect(worker.asked).toEqual(['register']);
    page.visibilityState = 'visible';
    page.dispatchEvent(new Event('visibilitychange'));
    expect(worker.asked).toEqual(['register', 'update']);
    vi.advanceTimersByTime(6 * 3_600_000 - 1);
    expect(worker.asked).toEqual(['register', 'update']);
    vi.advanceTimersByTime(1);
    expect(worker.asked).toEqual(['register', 'update', 'update']);
  });

  it('tells of a release that waits also to whoever asks later, and takes nothing by itself', async () => {
    const update = await opened();
    worker.heard.get('waiting')!();
    let told = 0;
    update.onWaiting(() => {
      told += 1;
    });
    expect(told).toBe(1);
    vi.advanceTimersByTime(86_400_000);
    expect(worker.asked).not.toContain('skip waiting');
    expect(reloads).toBe(0);
  });

  it('reloads when the newer worker has taken over, and not before', async () => {
    const update = await opened();
    update.apply();
    expect(worker.asked.at(-1)).toBe('skip waiting');
    vi.advanceTimersByTime(4_999);
    expect(reloads).toBe(0);
    worker.heard.get('controlling')!();
    expect(reloads).toBe(1);
  });

  it('reloads after five seconds where nothing is heard of it', async () => {
    const update = await opened();
    update.apply();
    vi.advanceTimersByTime(5_000);
    expect(reloads).toBe(1);
  });

  it('reloads under nobody who has begun a turn since, however late the newer worker takes over', async () => {
    const update = await opened();
    update.apply();
    isTimed = true;
    vi.advanceTimersByTime(5_000);
    worker.heard.get('controlling')!();
    vi.advanceTimersByTime(86_400_000);
    expect(reloads).toBe(0);
  });

  it('reloads when it is asked once more after the turn, though the newer worker has taken over by then', async () => {
    const update = await opened();
    update.apply();
    isTimed = true;
    worker.heard.get('controlling')!();
    vi.advanceTimersByTime(5_000);
    isTimed = false;
    update.apply();
    vi.advanceTimersByTime(5_000);
    expect(reloads).toBe(1);
  });

  it('tells the worker in use which language is spoken, whose words are then kept', async () => {
    told.length = 0;
    await opened();
    await vi.waitFor(() => expect(told).toEqual([{ type: 'SPOKEN', language: 'de' }]));
  });
});
