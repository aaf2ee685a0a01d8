import type { Clock } from '../application/ports/clock';
import { COARSE_STEP_MS } from '../domain/records/coarse-clock';
import type { Stamp } from '../domain/records/stamp';
import { zoneName } from './zone-name';

/** So many looks are 100 ms and more; a clock that has not moved by then stands still, and tells nothing of its steps. */
const MOST_LOOKS = 5_000_000;
/** A page that was busy between two looks has seen a long step; three times in a row it was not. */
const TRIES = 3;

/** The shortest of a few steps that the clock makes while it is looked at. A fine clock is found out at once. */
function measuredStepMs(): number {
  let shortest = Number.POSITIVE_INFINITY;
  for (let tries = 0; tries < TRIES && shortest > COARSE_STEP_MS; tries += 1) {
    const begin = nextStep();
    shortest = Math.min(shortest, nextStep() - begin);
  }
  return shortest;
}

function nextStep(): number {
  const from = performance.now();
  let now = from;
  for (let looks = 0; now === from && looks < MOST_LOOKS; looks += 1) now = performance.now();
  return now;
}

/**
 * The clocks of this page. The wall clock of an event is Date.now() less the time the event waited:
 * timeOrigin + now() would miss every correction of the wall clock since the page was loaded.
 */
export function pageClock(run: string): Clock {
  let hidden = document.visibilityState === 'hidden';
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'hidden') hidden = true;
  });
  let step: number | undefined;
  const zone = zoneName(() => Intl.DateTimeFormat().resolvedOptions().timeZone);
  const stampAt = (timeStamp: number): Stamp => {
    const waitedMs = Math.max(0, performance.now() - timeStamp);
    const wallMs = Math.round(Date.now() - waitedMs);
    const offsetMin = 0 - new Date(wallMs).getTimezoneOffset();
    return { run, monoMs: Math.round(timeStamp), wallMs, zone: zone(timeStamp, offsetMin), offsetMin };
  };
  return {
    now: () => stampAt(performance.now()),
    stampOf: ({ timeStamp }) => stampAt(timeStamp > 0 ? timeStamp : performance.now()),
    stepMs: () => (step ??= measuredStepMs()),
    wasHidden() {
      const was = hidden;
      hidden = document.visibilityState === 'hidden';
      return was;
    },
    every(periodMs, call) {
      const timer = setInterval(call, periodMs);
      return () => clearInterval(timer);
    },
    after(delayMs, call) {
      const timer = setTimeout(call, delayMs);
      return () => clearTimeout(timer);
    },
  };
}
