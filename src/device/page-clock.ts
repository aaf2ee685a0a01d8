import type { Clock } from '../application/ports/clock';
import type { Stamp } from '../domain/records/stamp';
import { zoneName } from './zone-name';

interface WithTemporal {
  readonly Temporal?: { readonly Now: { timeZoneId(): string } };
}

/**
 * The tablet's time zone by its IANA name. Where a browser has no Temporal, the first time this is asked takes 20 ms:
 * the page asks while it waits for its records, and not at the first tap.
 */
export function nameOfZone(): string {
  const { Temporal } = globalThis as WithTemporal;
  return Temporal?.Now.timeZoneId() ?? Intl.DateTimeFormat().resolvedOptions().timeZone;
}

/**
 * The clocks of this page. The wall clock of an event is Date.now() less the time the event waited:
 * timeOrigin + now() would miss every correction of the wall clock since the page was loaded.
 *
 * @param stepMs the steps of the monotonic one, as measured; 0 until they are
 */
export function pageClock(run: string, stepMs: () => number): Clock {
  let hidden = document.visibilityState === 'hidden';
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'hidden') hidden = true;
  });
  const zone = zoneName(nameOfZone);
  const stampAt = (timeStamp: number): Stamp => {
    const waitedMs = Math.max(0, performance.now() - timeStamp);
    const wallMs = Math.round(Date.now() - waitedMs);
    const offsetMin = 0 - new Date(wallMs).getTimezoneOffset();
    return { run, monoMs: Math.round(timeStamp), wallMs, zone: zone(timeStamp, offsetMin), offsetMin };
  };
  return {
    now: () => stampAt(performance.now()),
    stampOf: ({ timeStamp }) => stampAt(timeStamp > 0 ? timeStamp : performance.now()),
    stepMs,
    wasHidden() {
      const was = hidden;
      hidden = document.visibilityState === 'hidden';
      return was;
    },
    every(periodMs, call) {
      const timer = setInterval(call, periodMs);
      // A hidden page's timers are put off, by a minute and more.
      const seen = () => {
        if (document.visibilityState === 'visible') call();
      };
      document.addEventListener('visibilitychange', seen);
      return () => {
        clearInterval(timer);
        document.removeEventListener('visibilitychange', seen);
      };
    },
    after(delayMs, call) {
      const timer = setTimeout(call, delayMs);
      return () => clearTimeout(timer);
    },
  };
}
