import type { ElementDefinition } from '../shop/element-definition';
import type { AllowanceTerms } from '../study/allowance-terms';
import type { FrequencySource } from '../study/seen-frequency';
import type { TypedClock } from '../study/study-clock';
import type { StudyRow } from '../study/study-row';
import type { PartSize } from './standard-fact';

/** What happens in a study: the taps of the engineer, and what is decided about them afterwards. */
export type StudyFact =
  | ({ readonly kind: 'study-started'; readonly starts: 'study' } & StudyHeading)
  /** The break point of the element in hand; it carries the rating judged before the tap. */
  | ({ readonly kind: 'element-ended' } & RatedTap)
  /**
   * The break point of the element in hand was not seen: it merges with the next one. With `waits`, where the machine
   * runs and the next one needs it to stand, the operator waits for it; without it the record is an older one.
   */
  | { readonly kind: 'break-point-missed'; readonly waits?: true }
  /** Work that is not of the job, timed apart inside the element in hand. */
  | { readonly kind: 'foreign-began' }
  | { readonly kind: 'foreign-ended'; readonly description: string }
  /** Work of the job that does not come every cycle, timed apart inside the element in hand. */
  | { readonly kind: 'occasional-began'; readonly elementNo: number }
  | ({ readonly kind: 'occasional-ended' } & RatedTap)
  /** The work goes on with another element than the next one; the time since the last break point is its. */
  | { readonly kind: 'element-chosen'; readonly elementNo: number }
  /** The element in hand will be left out for this cause; null takes the mark away. */
  | { readonly kind: 'in-hand-marked'; readonly cause: string | null }
  /** Two lanes: the machine's break point, whatever the operator does. */
  | { readonly kind: 'machine-ended' }
  /** Snapback: the watch stands, and the element in hand begins anew when it goes on. */
  | { readonly kind: 'watch-held' }
  | { readonly kind: 'watch-went-on' }
  /** A word on what is in hand: the name of a foreign element, a remark on any other. */
  | { readonly kind: 'in-hand-noted'; readonly note: string }
  | { readonly kind: 'study-ended' }
  | { readonly kind: 'reading-excluded'; readonly reading: string; readonly cause: string }
  | { readonly kind: 'reading-restored'; readonly reading: string }
  | { readonly kind: 'reading-rated'; readonly reading: string; readonly ratingPct: number }
  | { readonly kind: 'reading-noted'; readonly reading: string; readonly note: string }
  | { readonly kind: 'allowances-set'; readonly terms: AllowanceTerms }
  | {
      readonly kind: 'frequency-set';
      readonly elementNo: number;
      readonly unitsPerOccurrence: number;
      readonly source: FrequencySource;
    }
  /** The clock check as a person read it off the shop's clock. */
  | ({ readonly kind: 'clock-checked' } & TypedClock)
  | {
      readonly kind: 'study-imported';
      readonly starts: 'study';
      readonly study: string;
      readonly fileName: string;
      readonly rows: readonly StudyRow[];
      /** The method that a paper study was typed for; left out where a table came in. */
      readonly elements?: readonly ElementDefinition[];
      /**
       * Rows of a paper study, from 1, whose rating does not stand on the sheet: the one before was carried on, or 100
       * assumed. Left out: nobody can say.
       */
      readonly filledIn?: readonly number[];
    };

/** The end of something that is rated. */
export interface RatedTap {
  readonly ratingPct: number;
  /** Whether the rating was tapped for this element, or stood from one before. Left out: nobody can say, or a machine's. */
  readonly judged?: boolean;
}

/** What stands at the head of a time study sheet. */
export interface StudyHeading {
  readonly title: string;
  readonly part: string;
  readonly partCode: string;
  readonly methodRevision: number;
  readonly elements: readonly ElementDefinition[];
  readonly partsPerCycle: number;
  readonly conditions: string;
  readonly operator: string;
  readonly observer: string;
  /** The person under study knows that it is recorded, and why. */
  readonly personTold: boolean;
  readonly terms: AllowanceTerms;
  /** How the watch is read. Left out: continuous. */
  readonly timing?: 'continuous' | 'snapback';
  /**
   * Two: the operator and the machine are timed at once. One: one after the other, and a run that holds internal work
   * goes from its beginning to its own tap. Left out: every time is its own, as on a sheet of paper.
   */
  readonly lanes?: 1 | 2;
  readonly purpose?: StudyPurpose;
  /** What was agreed with the person or with whoever speaks for them. */
  readonly agreement?: string;
  /** Who, when and how many cycles: the sampling plan in words, and its cycles as a number. */
  readonly plan?: string;
  readonly plannedCycles?: number;
  /** How large the part is, where an element grows with it. */
  readonly sizes?: readonly PartSize[];
  /** The steps of the browser's clock in milliseconds, where they are long (COARSE_STEP_MS). */
  readonly clockStepMs?: number;
}

export const studyPurposes = ['standard', 'check', 'improve'] as const;
export type StudyPurpose = (typeof studyPurposes)[number];
