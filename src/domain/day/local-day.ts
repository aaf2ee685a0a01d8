import type { Stamp } from '../records/stamp';

/** The calendar day of a moment where it happened, as 2026-03-02. */
export function localDay({ wallMs, offsetMin }: Pick<Stamp, 'wallMs' | 'offsetMin'>): string {
  return new Date(wallMs + offsetMin * 60_000).toISOString().slice(0, 10);
}
