/** A tab that has not handed over by then is asleep or stuck. */
const PATIENCE_MS = 3_000;

/**
 * Gets the lock from the tab that has it: by asking, or else without.
 *
 * @param acquire asks the browser for the lock; false when it was not given
 * @param ask tells the other tab to hand over
 * @param isHeld whether this tab has it by now, also through another request
 */
export async function takeOverLock(
  acquire: (options: LockOptions) => Promise<boolean>,
  ask: () => void,
  isHeld: () => boolean,
): Promise<void> {
  const waiting = new AbortController();
  const patience = setTimeout(() => waiting.abort(), PATIENCE_MS);
  const polite = acquire({ signal: waiting.signal });
  ask();
  const handedOver = await polite;
  clearTimeout(patience);
  // Tapped twice, the other request may have it.
  if (!handedOver && !isHeld()) await acquire({ steal: true });
}
