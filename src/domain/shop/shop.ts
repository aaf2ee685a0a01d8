import type { StopReason } from '../records/shop-fact';
import type { Tapping, TargetSource } from '../records/turn-fact';
import type { ElementDefinition } from './element-definition';
import type { ShiftCalendar } from './shift-calendar';

export interface DatedCalendar {
  readonly sinceWallMs: number;
  readonly calendar: ShiftCalendar;
}

/** The shop as its records tell it: what it makes, how, at what pace, and why work stops. */
export interface Shop {
  readonly parts: readonly Part[];
  /** Codes, not names. */
  readonly people: readonly string[];
  readonly reasons: readonly StopReason[];
  /** Who learns, and up to how many parts. */
  readonly learners: readonly Learner[];
  /** When the shop works; null until somebody says so. */
  readonly calendar: ShiftCalendar | null;
  /** That calendar and those before it, oldest first, each from when it held. */
  readonly calendars: readonly DatedCalendar[];
  /** A supervisor's PIN is set: standards are changed only by whoever knows it. */
  readonly isLatched: boolean;
}

export interface Learner {
  readonly code: string;
  readonly parts: number;
  /** From when on they count, wall clock in milliseconds. */
  readonly sinceWallMs: number;
}

export interface Part {
  readonly id: string;
  readonly code: string;
  readonly name: string;
  readonly retired: boolean;
  /** Milliseconds a part; null when the shop has set none. */
  readonly targetMs: number | null;
  /** `past`: a standard time, and another standard was issued since. */
  readonly targetSource: TargetSource | 'past' | null;
  /** The study whose standard time the target is; null for any other target. */
  readonly targetStudy: string | null;
  readonly tapping: Tapping;
  /** Oldest first; a revision never changes once it is written. */
  readonly methods: readonly MethodRevision[];
}

export interface MethodRevision {
  /** 1, 2, 3 … */
  readonly revision: number;
  /** The day it was written, as 2026-03-09, where it was written. */
  readonly writtenOn: string;
  readonly elements: readonly ElementDefinition[];
  readonly partsPerCycle: number;
  readonly conditions: string;
}

/** The reasons a shop starts with; worded in the tablet's language, so their labels are empty. */
export const firstReasons: readonly StopReason[] = [
  { id: 'material', label: '', category: 'stoppage' },
  { id: 'machine', label: '', category: 'stoppage' },
  { id: 'quality', label: '', category: 'stoppage' },
  { id: 'called-away', label: '', category: 'called-away' },
  { id: 'set-up', label: '', category: 'set-up' },
  { id: 'break', label: '', category: 'planned-break' },
];
