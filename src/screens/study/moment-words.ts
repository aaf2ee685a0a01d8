import { localIso } from '../../domain/records/local-iso';
import type { Stamp } from '../../domain/records/stamp';

/** `2026-03-02 07:00`, by the wall clock of the place where it happened. */
export function momentWords({ wallMs, offsetMin }: Pick<Stamp, 'wallMs' | 'offsetMin'>): string {
  return localIso(wallMs, offsetMin).slice(0, 16).replace('T', ' ');
}
