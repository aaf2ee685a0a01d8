import { useState } from 'preact/hooks';
import { useApp } from '../app';
import { type TimeUnit, type TimeWords, timeWords } from './time-words';

/** DO NOT RENAME: a tablet may hold a choice under it. */
const NAME = 'study-unit';

/** How times are written: chosen once, and so on every sheet of this tablet. */
export function useTimeUnit(): { unit: TimeUnit; time: TimeWords; choose: (unit: TimeUnit) => void } {
  const { jotter } = useApp();
  const [unit, setUnit] = useState<TimeUnit>(() => {
    const kept = jotter.read(NAME) ?? '';
    return Object.hasOwn(timeWords, kept) ? (kept as TimeUnit) : 'min';
  });
  const choose = (chosen: TimeUnit) => {
    jotter.write(NAME, chosen);
    setUnit(chosen);
  };
  return { unit, time: timeWords[unit], choose };
}
