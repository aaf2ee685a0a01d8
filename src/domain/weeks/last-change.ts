import type { DayNote } from './review-book';

/** The newest day, up to another, from which on the work was noted as changed; null where it never was. */
export function lastChange(
  notes: readonly Pick<DayNote, 'day' | 'isChange'>[],
  until: string,
): string | null {
  const changed = notes.filter(({ isChange, day }) => isChange && day <= until).map(({ day }) => day);
  return changed.sort().at(-1) ?? null;
}
