import type { ElementClass, Placement, WorkKind } from '../shop/element-definition';
import type { AllowanceBasis } from './allowance-terms';

/**
 * One reading of a study with everything needed to recompute the study from its rows alone: one row
 * of the readings table, read and checked.
 */
export interface StudyRow {
  readonly study: string;
  /** 1, 2, 3 … */
  readonly cycle: number;
  readonly element: string;
  readonly elementNo: number;
  readonly elementClass: ElementClass;
  readonly work: WorkKind;
  readonly placement: Placement;
  readonly unitsPerOccurrence: number;
  readonly partsPerCycle: number;
  /** The element's own time, milliseconds; null when its break point was not seen. */
  readonly observedMs: number | null;
  readonly ratingPct: number;
  /** Why the reading is left out; null when it is used. */
  readonly excluded: string | null;
  readonly allowancePct: number;
  readonly allowanceBasis: AllowanceBasis;
  readonly machineAllowancePct: number;
  /** Columns that are carried through unchanged, by their header, known or not. */
  readonly carried: Readonly<Record<string, string>>;
}
