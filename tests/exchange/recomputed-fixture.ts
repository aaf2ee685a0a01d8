import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { PrecisionAsked } from '../../src/domain/study/summarise-study';
import { type Recomputed, type RecomputedStudy, recomputeTable } from '../../src/exchange/recompute-table';

export function fixturePath(name: string): string {
  return fileURLToPath(new URL(`../../fixtures/${name}`, import.meta.url));
}

export function fixtureText(name: string): string {
  return readFileSync(fixturePath(name), 'utf8');
}

/** The figures of a table that must be readable: its faults are thrown. */
export function recomputed(table: string, asked?: PrecisionAsked): Recomputed {
  const result = recomputeTable(table, asked);
  if (!result.ok) throw new Error(JSON.stringify(result.faults));
  return result.recomputed;
}

export function onlyStudy(table: string, asked?: PrecisionAsked): RecomputedStudy {
  const { studies } = recomputed(table, asked);
  if (studies.length !== 1) throw new Error(`one study expected, ${studies.length} found`);
  return studies[0]!;
}

/** Minutes from seconds, as the books print. */
export function inMinutes(seconds: number | null | undefined): number {
  if (seconds === null || seconds === undefined) throw new Error('a time expected, none said');
  return seconds / 60;
}
