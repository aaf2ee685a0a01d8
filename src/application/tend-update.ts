import type { Bench } from './bench';
import type { AppUpdate } from './ports/app-update';
import type { Jotter } from './ports/jotter';
import type { Presence } from './ports/presence';

/** A release that nobody took for so long: on a tablet whose page is never closed it would wait for ever. */
const LONG_MS = 7 * 86_400_000;
/** Nobody is there. */
const IDLE_MS = 600_000;
const LOOK_MS = 60_000;
const JOT = 'update-waits';

interface Surroundings {
  /** What is in hand; null while the records are not open. */
  readonly bench: () => Pick<Bench, 'busy' | 'clock' | 'saving'> | null;
  readonly jotter: Jotter;
  readonly presence: Presence;
  /** The release that runs: what was jotted down under another one is over. */
  readonly release: string;
}

/**
 * Takes a waiting release by itself once it has waited for seven days.
 *
 * Must not while something is timed, while a record is not saved, or within ten minutes of a touch.
 *
 * @param every calls again and again
 */
export function tendUpdate(
  update: Pick<AppUpdate, 'apply'>,
  { bench, jotter, presence, release }: Surroundings,
  every: (periodMs: number, call: () => void) => () => void,
): void {
  const stop = every(LOOK_MS, () => {
    const inHand = bench();
    if (!inHand) return;
    const nowMs = inHand.clock.now().wallMs;
    const [of, since] = (jotter.read(JOT) ?? '').split(' ');
    if (of !== release) return jotter.write(JOT, `${release} ${nowMs}`);
    const isLong = nowMs - Number(since) >= LONG_MS;
    const isQuiet = !inHand.busy && inHand.saving.value.state === 'saved' && presence.idleMs() >= IDLE_MS;
    if (!isLong || !isQuiet) return;
    stop();
    update.apply();
  });
}
