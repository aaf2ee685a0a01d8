import { localIso } from '../../domain/records/local-iso';
import type { Stamp } from '../../domain/records/stamp';
import type { Study } from '../../domain/study/study';

/** `2026-03-02 07:00`, by the wall clock of the place where it happened. */
export function momentWords({ wallMs, offsetMin }: Pick<Stamp, 'wallMs' | 'offsetMin'>): string {
  return toldMoment(localIso(wallMs, offsetMin));
}

/** The same of a moment that a table or a sheet tells; a day stays a day. */
export function toldMoment(started: string): string {
  return started.slice(0, 16).replace('T', ' ');
}

/** When a study was begun: by its own first record, or as the table says that it came from. */
export function begunWords({ heading, startedAt, readings }: Study): string {
  return heading ? momentWords(startedAt) : toldMoment(readings[0]?.row.carried.started_at ?? '');
}
