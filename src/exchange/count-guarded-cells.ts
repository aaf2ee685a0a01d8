import type { StudyRow } from '../domain/study/study-row';
import { looksLikeFormula } from './spreadsheet-safe-text';

/** Texts of a study that its table marks with an apostrophe against being run: worth a note beside the file. */
export function countGuardedCells(rows: readonly StudyRow[]): number {
  return rows
    .flatMap(({ study, element, excluded, carried }) => [
      study,
      element,
      excluded ?? carried.cause ?? '',
      ...Object.entries(carried).flatMap(([column, text]) => (column === 'cause' ? [] : [text])),
    ])
    .filter(looksLikeFormula).length;
}
