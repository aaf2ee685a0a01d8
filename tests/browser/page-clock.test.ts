import { afterEach, describe, expect, it, vi } from 'vitest';
import { measuredStepMs } from '../../src/device/measured-step';
import { nameOfZone, pageClock } from '../../src/device/page-clock';

const real = performance.now.bind(performance);

/** The clock tells time in steps of so many milliseconds, as browsers do that hide from trackers. */
function stepBy(ms: number): void {
  vi.spyOn(performance, 'now').mockImplementation(() => Math.floor(real() / ms) * ms);
}

afterEach(() => {
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
});

describe('the clock of the page', () => {
  it('measures the steps in which it tells time: this browser’s are far below 5 ms', () => {
    const stepMs = measuredStepMs();
    expect(stepMs).toBeGreaterThan(0);
    expect(stepMs).toBeLessThan(1);
  });

  for (const ms of [50 / 3, 100]) {
    it(`measures steps of ${ms.toFixed(1)} ms`, () => {
      stepBy(ms);
      expect(measuredStepMs()).toBeCloseTo(ms, 5);
    });
  }

  it('does not wait for ever for a clock that stands still', () => {
    vi.spyOn(performance, 'now').mockReturnValue(7);
    expect(measuredStepMs()).toBe(0);
  });

  it('calls at once when the page is seen again, so that the first figure shown is right', () => {
    let calls = 0;
    const stop = pageClock('run', () => 0).every(3_600_000, () => {
      calls += 1;
    });
    const visible = vi.spyOn(document, 'visibilityState', 'get');
    for (const [state, expected] of [
      ['hidden', 0],
      ['visible', 1],
    ] as const) {
      visible.mockReturnValue(state);
      document.dispatchEvent(new Event('visibilitychange'));
      expect(calls).toBe(expected);
    }
    stop();
    document.dispatchEvent(new Event('visibilitychange'));
    expect(calls).toBe(1);
  });

  it('gives an input the moment it was made, by both clocks, however late it is asked', async () => {
    const event = new Event('pointerdown');
    const madeWallMs = Date.now() - (performance.now() - event.timeStamp);
    await new Promise((resolve) => setTimeout(resolve, 60));
    const stamp = pageClock('run', () => 0).stampOf(event);
    expect(Math.abs(stamp.monoMs - event.timeStamp)).toBeLessThanOrEqual(0.5);
    expect(Math.abs(stamp.wallMs - madeWallMs)).toBeLessThanOrEqual(2);
    expect(stamp.zone).toBe(Intl.DateTimeFormat().resolvedOptions().timeZone);
  });

  it('names the same zone whether the browser has the quick way to ask or not', () => {
    const own = Intl.DateTimeFormat().resolvedOptions().timeZone;
    expect(nameOfZone()).toBe(own);
    vi.stubGlobal('Temporal', undefined);
    expect(nameOfZone()).toBe(own);
    vi.stubGlobal('Temporal', { Now: { timeZoneId: () => 'America/Lima' } });
    expect(nameOfZone()).toBe('America/Lima');
  });
});
