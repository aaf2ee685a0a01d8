import type { Jotter } from './ports/jotter';

/** DO NOT RENAME: tablets have the release that was seen last under it. */
const PLACE = 'release-seen';

/**
 * Whether another release ran on this tablet before and nobody was told yet of this one; gives what to call once
 * somebody was. A tablet that runs its first has nothing to be told.
 */
export function untoldRelease(jotter: Jotter, release: string): (() => void) | null {
  const seen = jotter.read(PLACE);
  const tell = () => jotter.write(PLACE, release);
  if (seen === null) tell();
  return seen === null || seen === release ? null : tell;
}
