import type { StudiesAnalysis } from './analyse-studies';
import { usualPrecision } from './summarise-study';

/** Why an issue is asked about: nobody can say how precise it is, or it is less so than aimed at. Null: neither. */
export function precisionMissed({
  sampling,
  uncertainty,
}: Pick<StudiesAnalysis, 'sampling' | 'uncertainty'>): 'unknown' | 'wide' | null {
  if (sampling === null || uncertainty === null) return 'unknown';
  return sampling > usualPrecision.precision ? 'wide' : null;
}
