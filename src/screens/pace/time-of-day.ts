import { localIso } from '../../domain/records/local-iso';
import type { Stamp } from '../../domain/records/stamp';
import type { Turn } from '../../domain/turn/turn';

const MINUTE_MS = 60_000;

/** Hours and minutes where it happened, 07:05. */
export function timeOfDay({ wallMs, offsetMin }: Pick<Stamp, 'wallMs' | 'offsetMin'>): string {
  return localIso(wallMs, offsetMin).slice(11, 16);
}

/**
 * When a plan or a forecast of a turn falls due, `ms` after it began. Plans are made in whole minutes, and the two clocks
 * part by a hair: cut off, a shift to 14:00 would end at 13:59.
 */
export function plannedTime({ startedAt }: Pick<Turn, 'startedAt'>, ms: number): string {
  const wallMs = Math.round((startedAt.wallMs + ms) / MINUTE_MS) * MINUTE_MS;
  return timeOfDay({ ...startedAt, wallMs });
}
