import { localIso } from '../../domain/records/local-iso';
import type { Stamp } from '../../domain/records/stamp';

/** `2026-03-02 07:00`, by the wall clock of the place where it happened. */
export function momentWords({ wallMs, offsetMin }: Pick<Stamp, 'wallMs' | 'offsetMin'>): string {
  return toldMoment(localIso(wallMs, offsetMin));
}

/** The same of a moment that a table or a sheet tells; a day stays a day. */
export function toldMoment(started: string): string {
  return started.slice(0, 16).replace('T', ' ');
}
