import { useRef } from 'preact/hooks';
import { useApp } from './app';

/**
 * Changes once what was recorded is in the log, or was refused by it: whoever reads the log reads it again then. A
 * record that is saved at the second try only changes it a second time.
 */
export function useLogChanges(): string {
  const { bench } = useApp();
  const changes = bench.changes.value;
  const { state } = bench.saving.value;
  const latest = useRef('');
  if (state !== 'recorded') latest.current = `${changes} ${state}`;
  return latest.current;
}
