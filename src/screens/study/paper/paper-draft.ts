import type { ElementDefinition } from '../../../domain/shop/element-definition';
import { noAllowances } from '../../../domain/study/allowance-terms';
import type { PaperCell, PaperReads } from '../../../domain/study/paper-study';
import { asTyped, parseDecimal } from '../../../i18n/parse-number';
import type { App } from '../../app';
import type { TermsFrom } from '../carried-terms';
import type { TypedSizes } from '../study-draft';
import { draftOfTerms, type TermsDraft } from '../terms-draft';

/** One cell as it is typed. */
export interface TypedCell {
  readonly time: string;
  readonly rating: string;
  readonly cause: string;
  readonly isMissed: boolean;
}

export interface PaperDraft {
  readonly part: string;
  /** Of the part, by what its elements grow with. */
  readonly sizes: TypedSizes;
  readonly title: string;
  readonly operator: string;
  readonly observer: string;
  readonly day: string;
  readonly unit: 'min' | 's';
  readonly reads: PaperReads;
  /** Empty until the part is chosen: then those in force. */
  readonly terms: TermsDraft;
  /** Null once they were typed, and where there are none. */
  readonly termsFrom: TermsFrom | null;
  readonly isTyping: boolean;
  readonly cycle: number;
  /** Place among the lines of the sheet. */
  readonly place: number;
  readonly cells: Readonly<Record<string, TypedCell>>;
}

export const emptyCell: TypedCell = { time: '', rating: '', cause: '', isMissed: false };

export const emptyPaperDraft: PaperDraft = {
  part: '',
  sizes: {},
  title: '',
  operator: '',
  observer: '',
  day: '',
  unit: 'min',
  reads: 'own',
  terms: draftOfTerms(noAllowances),
  termsFrom: null,
  isTyping: false,
  cycle: 1,
  place: 0,
  cells: {},
};

/** DO NOT RENAME: a tablet may hold a half-typed study under it. */
const NAME = 'paper-study';

export const keptPaper = {
  of({ jotter }: Pick<App, 'jotter'>): PaperDraft {
    try {
      const kept: PaperDraft | null = JSON.parse(jotter.read(NAME) ?? 'null');
      return kept && typeof kept === 'object' ? { ...emptyPaperDraft, ...kept } : emptyPaperDraft;
    } catch {
      return emptyPaperDraft;
    }
  },
  isKept: ({ jotter }: Pick<App, 'jotter'>): boolean => jotter.read(NAME) !== null,
  keep: ({ jotter }: Pick<App, 'jotter'>, draft: PaperDraft): void =>
    jotter.write(NAME, JSON.stringify(draft)),
  drop: ({ jotter }: Pick<App, 'jotter'>): void => jotter.write(NAME, null),
};

export const cellKey = (cycle: number, elementIndex: number) => `${cycle}:${elementIndex}`;

/** The lines of the sheet: a running watch is read at the break points of the cycle only. */
export function linesOf(elements: readonly ElementDefinition[], reads: PaperReads): number[] {
  return [...elements.keys()].filter(
    (index) => reads === 'own' || elements[index]?.elementClass === 'repetitive',
  );
}

/** A typed time in milliseconds; null for anything that is no number above nothing. */
export function typedMs(text: string, unit: 'min' | 's'): number | null {
  const read = parseDecimal(text);
  return read === null ? null : Math.round(read * (unit === 'min' ? 60_000 : 1_000));
}

/** A time of the sheet as it would be typed again. */
export function asTypedTime(ms: number, unit: 'min' | 's'): string {
  return asTyped(Number((ms / (unit === 'min' ? 60_000 : 1_000)).toFixed(4)));
}

/** The rating that a cell without one counts with: the last one typed of its element in a cycle before, 100 at first. */
export function carriedRating(
  { cells }: Pick<PaperDraft, 'cells'>,
  cycle: number,
  elementIndex: number,
): string {
  for (let before = cycle - 1; before > 0; before -= 1) {
    const { rating } = cells[cellKey(before, elementIndex)] ?? emptyCell;
    if (rating !== '') return rating;
  }
  return '100';
}

/**
 * The cells in the order of the sheet. A rating that was not typed is the last one of that element, and 100 at
 * first; machine work is never rated. What was left empty is no reading, but for a watch between two that were read.
 */
export function cellsOf(draft: PaperDraft, elements: readonly ElementDefinition[]): PaperCell[] {
  const lines = linesOf(elements, draft.reads);
  const cycles = Math.max(0, ...Object.keys(draft.cells).map((key) => Number(key.split(':')[0])));
  const all: PaperCell[] = [];
  for (let cycle = 1; cycle <= cycles; cycle += 1) {
    for (const elementIndex of lines) {
      const typed = draft.cells[cellKey(cycle, elementIndex)] ?? emptyCell;
      const isMachine = elements[elementIndex]?.work === 'machine';
      const carried = isMachine ? '100' : carriedRating(draft, cycle, elementIndex);
      const ratingPct = parseDecimal(typed.rating || carried) ?? Number.NaN;
      const ms = typed.isMissed ? null : typedMs(typed.time, draft.unit);
      if (ms === null && !typed.isMissed && draft.reads === 'own') continue;
      all.push({ cycle, elementIndex, ms, ratingPct, isFilledIn: typed.rating === '', cause: typed.cause });
    }
  }
  if (draft.reads === 'own') return all;
  return all.slice(0, all.findLastIndex(({ ms }) => ms !== null) + 1);
}
