/** A name that may be this old: a journey into another zone with the same offset is seen after it. */
const FRESH_MS = 60_000;

/**
 * Tells the tablet's time zone at a moment. Browsers take 0.3 ms to say it and leave work for the collector, which
 * five ticks a second and every tap would pay: it is asked again when the offset has changed, or after a minute.
 */
export function zoneName(ask: () => string): (atMs: number, offsetMin: number) => string {
  let name = '';
  let askedMs = Number.NEGATIVE_INFINITY;
  let askedOffset = 0;
  return (atMs, offsetMin) => {
    if (offsetMin !== askedOffset || Math.abs(atMs - askedMs) >= FRESH_MS) {
      name = ask();
      askedMs = atMs;
      askedOffset = offsetMin;
    }
    return name;
  };
}
