import type { PlacedRecord } from '../records/place-on-timeline';
import { recordKey } from '../records/record-key';
import type { TurnFact } from '../records/turn-fact';
import { breakName } from './spanned-breaks';
import type { LedgerSpan } from './turn';

type Said<Kind extends TurnFact['kind']> = Extract<TurnFact, { kind: Kind }>;

/** What was said about the taps of a turn. It may come long after them; what was said last holds. */
export interface TurnRemarks {
  readonly explanations: ReadonlyMap<string, Said<'stoppage-explained'>>;
  readonly outcomes: ReadonlyMap<string, Said<'part-judged'>>;
  readonly gaps: ReadonlyMap<string, Said<'gap-explained'>['as']>;
  readonly changes: ReadonlyMap<string, Said<'change-explained'>['as']>;
  /** Taps that were taken for bounces: true where they were parts all the same. */
  readonly taps: ReadonlyMap<string, boolean>;
  readonly cycles: ReadonlyMap<string, Said<'cycle-judged'>['as']>;
  readonly recoded: ReadonlyMap<string, Said<'part-recoded'>>;
  readonly reclassified: readonly LedgerSpan[];
  /** Planned breaks through which work went on, by name. */
  readonly workedBreaks: ReadonlySet<string>;
  /** Causes of the parts that are set aside. */
  readonly setAside: ReadonlyMap<string, string>;
  readonly confirmedParts: ReadonlySet<string>;
  readonly confirmedPeople: ReadonlySet<string>;
  /** Parts as counted by hand; null when nobody did. */
  readonly countedParts: number | null;
  /** Good parts that are wanted; null when nobody said. */
  readonly wantedParts: number | null;
  /** Somebody took the whole turn away again. */
  readonly isWithdrawn: boolean;
  /** The operator's own words; empty when there are none. */
  readonly note: string;
  /** Whose the whole turn was after all; null when nobody said so. */
  readonly person: string | null;
}

/** Gathers what was said in a turn, to be had when its taps are read. */
export function turnRemarks(records: readonly PlacedRecord[]): TurnRemarks {
  const explanations = new Map<string, Said<'stoppage-explained'>>();
  const outcomes = new Map<string, Said<'part-judged'>>();
  const gaps = new Map<string, Said<'gap-explained'>['as']>();
  const changes = new Map<string, Said<'change-explained'>['as']>();
  const taps = new Map<string, boolean>();
  const cycles = new Map<string, Said<'cycle-judged'>['as']>();
  const recoded = new Map<string, Said<'part-recoded'>>();
  const reclassified = new Map<string, LedgerSpan>();
  const workedBreaks = new Set<string>();
  const setAside = new Map<string, string>();
  const confirmedParts = new Set<string>();
  const confirmedPeople = new Set<string>();
  let note = '';
  let isWithdrawn = false;
  let person: string | null = null;
  let countedParts: number | null = null;
  let wantedParts: number | null = null;
  for (const { record } of records) {
    const { fact } = record;
    switch (fact.kind) {
      case 'stoppage-explained':
        explanations.set(fact.stoppage, fact);
        break;
      case 'part-judged':
        outcomes.set(fact.partDone, fact);
        break;
      case 'gap-explained':
        gaps.set(fact.gap, fact.as);
        break;
      case 'change-explained':
        changes.set(fact.change, fact.as);
        break;
      case 'turn-noted':
        note = fact.note;
        break;
      case 'tap-counted':
      case 'tap-left-out':
        taps.set(fact.tap, fact.kind === 'tap-counted');
        break;
      case 'cycle-judged':
        cycles.set(fact.partDone, fact.as);
        break;
      case 'part-recoded':
        for (const key of fact.partDone) recoded.set(key, fact);
        break;
      case 'time-reclassified':
        reclassified.set(recordKey(record), fact);
        break;
      case 'break-answered': {
        const { fromMs, toMs } = fact;
        const name = breakName(fact.partDone, fromMs);
        // The last answer holds, and stands where it was said among all that was reclassified.
        reclassified.delete(name);
        workedBreaks.delete(name);
        if (fact.as === 'work') workedBreaks.add(name);
        else reclassified.set(name, { category: 'planned-break', reason: 'break', label: '', fromMs, toMs });
        break;
      }
      case 'part-set-aside':
        setAside.set(fact.partDone, fact.cause);
        break;
      case 'part-taken-back':
        setAside.delete(fact.partDone);
        break;
      case 'part-confirmed':
        confirmedParts.add(fact.partDone);
        break;
      case 'parts-counted':
        countedParts = fact.count;
        break;
      case 'parts-wanted':
        wantedParts = fact.parts;
        break;
      case 'turn-withdrawn':
        isWithdrawn = true;
        break;
      case 'person-confirmed':
        confirmedPeople.add(fact.gap);
        break;
      case 'person-corrected':
        if (fact.fromMs === undefined && fact.toMs === undefined) person = fact.person;
        break;
    }
  }
  return {
    explanations,
    outcomes,
    gaps,
    changes,
    taps,
    cycles,
    recoded,
    reclassified: [...reclassified.values()],
    workedBreaks,
    setAside,
    confirmedParts,
    confirmedPeople,
    countedParts,
    wantedParts,
    isWithdrawn,
    note,
    person,
  };
}
