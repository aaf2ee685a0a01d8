import { localIso } from '../../domain/records/local-iso';
import type { Stamp } from '../../domain/records/stamp';

/** Hours and minutes where it happened, 07:05. */
export function timeOfDay({ wallMs, offsetMin }: Pick<Stamp, 'wallMs' | 'offsetMin'>): string {
  return localIso(wallMs, offsetMin).slice(11, 16);
}
