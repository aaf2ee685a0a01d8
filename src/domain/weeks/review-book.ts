import { inOrder } from '../records/in-order';
import type { LogRecord } from '../records/log-record';
import { recordKey } from '../records/record-key';
import type { ComparisonTerms, Quotation, ReviewFact } from '../records/review-fact';
import type { Stamp } from '../records/stamp';

/** Something that was written down, with who did and when. */
export interface Written {
  /** Key of its record. */
  readonly key: string;
  readonly at: Stamp;
  readonly by: string;
}

/** What can be taken back, and stays to be read. */
export interface Withdrawable extends Written {
  readonly withdrawn?: Pick<Written, 'at' | 'by'>;
}

export interface DayNote extends Written {
  readonly day: string;
  readonly text: string;
  readonly isChange: boolean;
}

export interface OldMethodTiming extends Written {
  readonly part: string;
  readonly perPartMs: number;
  readonly newPerPartMs?: number;
  readonly source: string;
}

type Look = Extract<ReviewFact, { kind: 'people-looked-at' }>;

/** What the foreman decided, noted and promised. Everything in the order in which it was written. */
export interface ReviewBook {
  readonly setUpStandards: readonly { readonly at: Stamp; readonly standardMs: number | null }[];
  readonly notes: readonly DayNote[];
  readonly comparisons: readonly (Withdrawable & ComparisonTerms)[];
  readonly oldTimings: readonly OldMethodTiming[];
  readonly quotations: readonly (Withdrawable & Quotation)[];
  readonly looksAtPeople: readonly (Written & Omit<Look, 'kind' | 'by'>)[];
}

/** The book from the records of the shop's stream. */
export function foldReviewBook(records: readonly LogRecord[]): ReviewBook {
  const setUpStandards: ReviewBook['setUpStandards'][number][] = [];
  const notes = new Map<string, DayNote>();
  const comparisons = new Map<string, ReviewBook['comparisons'][number]>();
  const oldTimings = new Map<string, OldMethodTiming>();
  const quotations = new Map<string, ReviewBook['quotations'][number]>();
  const looksAtPeople: ReviewBook['looksAtPeople'][number][] = [];
  for (const record of inOrder(records)) {
    const { fact, stamp: at } = record;
    const key = recordKey(record);
    switch (fact.kind) {
      case 'set-up-standard-set':
        setUpStandards.push({ at, standardMs: fact.standardMs });
        break;
      case 'day-noted':
        notes.set(key, { key, at, ...withoutKind(fact) });
        break;
      case 'day-note-removed':
        notes.delete(fact.note);
        break;
      case 'comparison-fixed':
        comparisons.set(key, { key, at, ...withoutKind(fact) });
        break;
      case 'comparison-withdrawn':
        withdraw(comparisons, fact.comparison, { at, by: fact.by });
        break;
      case 'old-method-timed':
        oldTimings.set(key, { key, at, ...withoutKind(fact) });
        break;
      case 'old-timing-removed':
        oldTimings.delete(fact.timing);
        break;
      case 'quotation-made':
        quotations.set(key, { key, at, ...withoutKind(fact) });
        break;
      case 'quotation-withdrawn':
        withdraw(quotations, fact.quotation, { at, by: fact.by });
        break;
      case 'people-looked-at':
        looksAtPeople.push({ key, at, ...withoutKind(fact) });
        break;
    }
  }
  return {
    setUpStandards,
    notes: [...notes.values()],
    comparisons: [...comparisons.values()],
    oldTimings: [...oldTimings.values()],
    quotations: [...quotations.values()],
    looksAtPeople,
  };
}

function withdraw<Entry extends Withdrawable>(
  written: Map<string, Entry>,
  key: string,
  withdrawn: Required<Withdrawable>['withdrawn'],
): void {
  const entry = written.get(key);
  if (entry) written.set(key, { ...entry, withdrawn });
}

/** What a set-up earned at a moment; null when nothing was set by then. */
export function setUpStandardAt({ setUpStandards }: ReviewBook, wallMs: number): number | null {
  return setUpStandards.findLast(({ at }) => at.wallMs <= wallMs)?.standardMs ?? null;
}

function withoutKind<F extends ReviewFact>({ kind: _, ...rest }: F): Omit<F, 'kind'> {
  return rest;
}
