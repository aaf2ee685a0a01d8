import { useEffect, useState } from 'preact/hooks';
import { useApp } from './app';

/**
 * Keeps the screen on for as long as something is timed, also while another screen is looked at. True while the
 * system keeps its promise.
 */
export function useScreenAwake(isTiming: boolean): boolean {
  const { bench, screenAwake } = useApp();
  const [isAwake, setAwake] = useState(true);
  useEffect(() => {
    if (!isTiming) return;
    screenAwake.onChange(setAwake);
    screenAwake.keep();
    return () => {
      if (!bench.busy) screenAwake.release();
    };
  }, [isTiming, bench, screenAwake]);
  return isAwake;
}
