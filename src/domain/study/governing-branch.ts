import type { StudySummary } from './summarise-study';

/** Which branch inside the machine's run is the longer one; `alone` where nobody works in it, and nothing is compared. */
export function governingBranch({
  governing,
  internalMs,
}: Pick<StudySummary, 'governing' | 'internalMs'>): 'operator' | 'machine' | 'alone' | 'nobody' {
  if (governing === null) return 'nobody';
  return internalMs === 0 ? 'alone' : governing;
}
