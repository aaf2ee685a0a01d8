import { localDay } from '../day/local-day';
import { inOrder } from '../records/in-order';
import type { LogRecord } from '../records/log-record';
import { recordKey } from '../records/record-key';
import type { IssuedStandard, PartSize } from '../records/standard-fact';

/** A standard of a part; a later one takes its place and it stays as it is. */
export interface StandardRevision extends IssuedStandard {
  readonly id: string;
  /** 1, 2, 3 … for the part. */
  readonly revision: number;
  readonly issuedOn: string;
  /** The same moment by the wall clock, milliseconds. */
  readonly issuedAtMs: number;
}

/** What the shop knows of a part beside its target: how large it is, and its standards, oldest first. */
export interface PartStandards {
  readonly sizes: readonly PartSize[];
  readonly standards: readonly StandardRevision[];
}

export const noStandards: PartStandards = { sizes: [], standards: [] };

/** Sizes and standards by part, from the records of the shop's stream. Read when asked for: Pace never needs it. */
export function foldStandards(shop: readonly LogRecord[]): ReadonlyMap<string, PartStandards> {
  const parts = new Map<string, PartStandards>();
  for (const record of inOrder(shop)) {
    const { fact } = record;
    if (fact.kind === 'part-sized') {
      // A size says nothing about another one: what the part was said to have beside it stays.
      const known = parts.get(fact.part) ?? noStandards;
      const said = new Map([...known.sizes, ...fact.sizes].map((size) => [size.driver, size]));
      parts.set(fact.part, { ...known, sizes: [...said.values()] });
    } else if (fact.kind === 'standard-issued') {
      const { kind: _, part, ...issued } = fact;
      const known = parts.get(part) ?? noStandards;
      const revision: StandardRevision = {
        ...issued,
        id: recordKey(record),
        revision: known.standards.length + 1,
        issuedOn: localDay(record.stamp),
        issuedAtMs: record.stamp.wallMs,
      };
      parts.set(part, { ...known, standards: [...known.standards, revision] });
    }
  }
  return parts;
}

/** The standard that holds on a day: the last one issued of those in force by then; null when none is. */
export function standardInForce(
  standards: readonly StandardRevision[],
  day: string,
): StandardRevision | null {
  return standards.findLast(({ inForceOn }) => inForceOn <= day) ?? null;
}

/** The standard that will hold next, with the day it begins to; null when none is to come. */
export function standardToCome(standards: readonly StandardRevision[], day: string): StandardRevision | null {
  const now = standardInForce(standards, day);
  const later = standards.filter(({ revision }) => revision > (now?.revision ?? 0));
  const first = later.map(({ inForceOn }) => inForceOn).sort()[0];
  return later.findLast(({ inForceOn }) => inForceOn === first) ?? null;
}
