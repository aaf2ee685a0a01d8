import { groupBy } from '../group-by';
import type { ElementDefinition } from '../shop/element-definition';
import type { AllowanceTerms } from './allowance-terms';
import { HIGHEST_RATING_PCT } from './require-rating';
import { cycleOrder } from './study';
import type { StudyRow } from './study-row';

/** What was read off a paper sheet for one element of one cycle. */
export interface PaperCell {
  /** 1, 2, 3 … */
  readonly cycle: number;
  /** 0-based, in the method's list. */
  readonly elementIndex: number;
  /** The element's own time, or the running watch at its break point, milliseconds; null: it was not seen. */
  readonly ms: number | null;
  readonly ratingPct: number;
  /** No rating stands on the sheet: the one before was carried on, or 100 assumed. */
  readonly isFilledIn?: boolean;
  /** Why it is left out; empty when it is used. */
  readonly cause: string;
}

/** Own times, a watch that ran on, or one that went back to zero with each cycle. */
export const paperReads = ['own', 'watch', 'cycle'] as const;
export type PaperReads = (typeof paperReads)[number];

export interface PaperStudy {
  readonly title: string;
  readonly elements: readonly ElementDefinition[];
  readonly partsPerCycle: number;
  readonly terms: AllowanceTerms;
  readonly reads: PaperReads;
  /** What stands on every row alike. */
  readonly carried: Readonly<Record<string, string>>;
}

export type PaperFault =
  | { readonly why: 'nothing' }
  | {
      readonly why: 'watch-backwards';
      readonly cycle: number;
      readonly element: string;
      /** The watch as it was read, and the later one that it stands behind, milliseconds. */
      readonly ms: number;
      readonly beforeMs: number;
    }
  | {
      readonly why: 'machine-rated' | 'no-rating';
      readonly cycle: number;
      readonly element: string;
    };

/** Elements of every cycle that a cycle of the sheet does not have, in the order of the sheet. */
export function paperGaps(elements: readonly ElementDefinition[], cells: readonly PaperCell[]): PaperCell[] {
  const inCycle = cycleOrder(elements);
  return [...groupBy(cells, ({ cycle }) => cycle)].flatMap(([cycle, own]) => {
    const typed = new Set(own.map(({ elementIndex }) => elementIndex));
    return inCycle
      .filter((elementIndex) => !typed.has(elementIndex))
      .map((elementIndex) => ({ cycle, elementIndex, ms: null, ratingPct: 100, cause: '' }));
  });
}

/**
 * The rows of a study that was timed on paper, from its cells in the order of the sheet. With a running watch a time
 * is the difference to the break point before; where one was not seen its time lies in the next, and both are out.
 * What a cycle lacks is a break point not seen: half a cycle must not pass for a whole one.
 */
export function paperRows(
  study: PaperStudy,
  cells: readonly PaperCell[],
): {
  readonly rows: readonly StudyRow[];
  /** Rows, from 1, whose rating was filled in. */
  readonly filledIn: readonly number[];
  readonly faults: readonly PaperFault[];
} {
  const faults: PaperFault[] = [];
  const filledIn: number[] = [];
  const rows: StudyRow[] = [];
  let beforeMs = 0;
  let isMerged = false;
  let cycle = 0;
  for (const cell of [...cells, ...paperGaps(study.elements, cells)].sort(bySheet)) {
    const element = study.elements[cell.elementIndex]!;
    if (study.reads === 'cycle' && cell.cycle !== cycle) {
      beforeMs = 0;
      isMerged = false;
    }
    cycle = cell.cycle;
    const at = { cycle: cell.cycle, element: element.name };
    if (element.work === 'machine' && cell.ratingPct !== 100) faults.push({ why: 'machine-rated', ...at });
    if (!(cell.ratingPct > 0 && cell.ratingPct <= HIGHEST_RATING_PCT))
      faults.push({ why: 'no-rating', ...at });
    let observedMs = cell.ms;
    let cause = cell.cause.trim() === '' ? null : cell.cause.trim();
    if (study.reads !== 'own') {
      if (cell.ms === null) {
        isMerged = true;
      } else {
        if (cell.ms < beforeMs) faults.push({ why: 'watch-backwards', ...at, ms: cell.ms, beforeMs });
        observedMs = cell.ms - beforeMs;
        beforeMs = cell.ms;
        if (isMerged) cause = 'missed-break-point';
        isMerged = false;
      }
    }
    if (observedMs === null) cause = 'missed-break-point';
    rows.push(rowOf(study, element, cell, observedMs, cause));
    if (cell.isFilledIn) filledIn.push(rows.length);
  }
  const isSomething = rows.some(({ observedMs }) => observedMs !== null);
  return { rows, filledIn, faults: isSomething ? faults : [{ why: 'nothing' }] };
}

const bySheet = (a: PaperCell, b: PaperCell) => a.cycle - b.cycle || a.elementIndex - b.elementIndex;

function rowOf(
  { title, partsPerCycle, terms, carried }: PaperStudy,
  element: ElementDefinition,
  { cycle, elementIndex, ratingPct }: PaperCell,
  observedMs: number | null,
  excluded: string | null,
): StudyRow {
  return {
    study: title,
    cycle,
    element: element.name,
    elementNo: elementIndex + 1,
    elementClass: element.elementClass,
    work: element.work,
    placement: element.placement,
    unitsPerOccurrence: element.unitsPerOccurrence,
    partsPerCycle,
    observedMs,
    ratingPct,
    excluded,
    allowancePct: terms.allowancePct,
    allowanceBasis: terms.basis,
    machineAllowancePct: terms.machineAllowancePct,
    carried,
  };
}
