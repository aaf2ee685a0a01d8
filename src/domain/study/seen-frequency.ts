import { type OccasionalFrequency, occasionalFrequency } from '../../statistics/occasional-frequency';
import type { StudyRow } from './study-row';

/** Where the frequency of an occasional element comes from. */
export const frequencySources = ['method', 'record', 'observed'] as const;
export type FrequencySource = (typeof frequencySources)[number];

/** How often an occasional element was seen in a study, beside how often it is said to come. */
export interface SeenFrequency extends OccasionalFrequency {
  readonly occurrences: number;
  readonly workUnits: number;
}

/** Occurrences of an element over the work units of the study, with the exact Poisson interval at 95 %. */
export function seenFrequency(rows: readonly StudyRow[], element: string): SeenFrequency | null {
  const own = rows.filter((row) => row.element === element);
  const inCycle = rows.filter(({ elementClass }) => elementClass === 'repetitive');
  const cycles = new Set(inCycle.map(({ cycle }) => cycle)).size;
  const workUnits = cycles * (rows[0]?.partsPerCycle ?? 1);
  if (workUnits === 0) return null;
  return { ...occasionalFrequency(own.length, workUnits, 0.95), occurrences: own.length, workUnits };
}
