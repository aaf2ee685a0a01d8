import { useEffect, useState } from 'preact/hooks';
import { useApp } from '../app';

/**
 * Keeps the screen on for as long as a turn is open, also while another screen is looked at. True while the
 * system keeps its promise.
 */
export function useScreenAwake(isOpen: boolean): boolean {
  const { bench, screenAwake } = useApp();
  const [awake, setAwake] = useState(true);
  useEffect(() => {
    if (!isOpen) return;
    screenAwake.onChange(setAwake);
    screenAwake.keep();
    return () => {
      const turn = bench.turn.peek();
      if (!turn || turn.status === 'ended') screenAwake.release();
    };
  }, [isOpen, bench, screenAwake]);
  return awake;
}
