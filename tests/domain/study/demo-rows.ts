import { readFileSync } from 'node:fs';
import type { StudyRow } from '../../../src/domain/study/study-row';
import { readReadingsTable } from '../../../src/exchange/read-readings-table';

/** Rows of a table of the fixtures: the invented shop's study of 30 cycles unless another is named. */
export function fixtureRows(name = 'studies/demo-m-k7-study'): readonly StudyRow[] {
  const file = readFileSync(new URL(`../../../fixtures/${name}.csv`, import.meta.url));
  const table = readReadingsTable(new Uint8Array(file));
  if (!table.ok) throw new Error(`${name} must be readable`);
  return table.rows;
}
