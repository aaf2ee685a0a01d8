import type { Stamp } from '../records/stamp';
import type { StudyHeading } from '../records/study-fact';
import type { ElementDefinition } from '../shop/element-definition';
import type { AllowanceTerms } from './allowance-terms';
import type { FrequencySource } from './seen-frequency';
import type { TypedClock } from './study-clock';
import type { StudyRow } from './study-row';

/** A row of a study that a correction can name. */
export interface Reading {
  /** Key of the record that made the reading; for an imported one followed by # and its place. */
  readonly id: string;
  readonly row: StudyRow;
  /** A missed break point: its time, if any, is not that of one element, and never enters a mean. */
  readonly isMerged: boolean;
  /** A machine's run that holds work of the operator, in a study of one lane: the operator's time is elsewhere. */
  readonly isBeside?: true;
  /** Whether its rating was judged for it alone, or stood from a reading before. Left out: nobody can say. */
  readonly judged?: boolean;
  /** What it was rated before the rating was corrected, once the study was over. */
  readonly firstRatingPct?: number;
}

/** A study as its records tell it. */
export interface Study {
  readonly id: string;
  readonly title: string;
  readonly status: 'open' | 'ended' | 'imported';
  /** Null for a study that came from a table. */
  readonly heading: StudyHeading | null;
  /** The elements of its method; none where a table does not say. */
  readonly method: readonly ElementDefinition[];
  readonly terms: AllowanceTerms;
  readonly startedAt: Stamp;
  /** Null while it is timed, and for one from a table. */
  readonly ended: { readonly stamp: Stamp; readonly atMs: number } | null;
  /** The clock check as a person typed it; null where nobody did. */
  readonly clock: TypedClock | null;
  /** Where the frequencies of occasional elements come from, by element number; others are the method's. */
  readonly frequencies: ReadonlyMap<number, FrequencySource>;
  readonly readings: readonly Reading[];
  /** What the operator stood waiting for a machine that ran beside. */
  readonly waits: readonly { readonly cycle: number; readonly observedMs: number }[];
  readonly watch: StudyWatch;
  /** The tap that Undo would take back; null when there is none. */
  readonly undoable: UndoableTap | null;
}

/** The taps of the engineer during the study: what Undo may take back. */
export type TapKind =
  | 'element-ended'
  | 'break-point-missed'
  | 'foreign-began'
  | 'foreign-ended'
  | 'occasional-began'
  | 'occasional-ended'
  | 'element-chosen'
  | 'in-hand-marked'
  | 'machine-ended'
  | 'watch-held'
  | 'watch-went-on';

export interface UndoableTap {
  readonly key: string;
  /** A tap that only ended a wait ended no element. */
  readonly kind: TapKind | 'wait-ended';
  /** The element it was about; empty for a foreign one. */
  readonly element: string;
}

/**
 * What the clocks did inside an element, from the least that it says of a reading to the most: the browser tells
 * time in long steps, the wall clock crept away or was set, the page was loaded again, it was gone for ten seconds and
 * more, the tablet slept.
 */
export const clockFlags = ['', 'coarse', 'clock-drifted', 'clock-set', 'reloaded', 'gone', 'slept'] as const;
export type ClockFlag = (typeof clockFlags)[number];

/** Where an open study stands: what the next tap will end. */
export interface StudyWatch {
  /** 1, 2, 3 … */
  readonly cycle: number;
  /** The element in hand, 0-based among the heading's elements; -1 when there is none. */
  readonly elementIndex: number;
  /** Elements whose break points were missed since the last reading, 0-based. */
  readonly merged: readonly { readonly cycle: number; readonly elementIndex: number }[];
  /** What is timed apart inside the element in hand, and the word on it. */
  readonly aside: {
    readonly elementIndex: number | null;
    readonly beganAtMs: number;
    readonly note: string;
  } | null;
  /** The machine's element that runs beside the operator. */
  readonly machine: {
    readonly elementIndex: number;
    readonly cycle: number;
    readonly beganAtMs: number;
    readonly clockFlag: ClockFlag;
    /** The break point that started it was missed: it can be seen to stop, but has no time. */
    readonly isStartUnseen?: true;
  } | null;
  /** Machine elements that begin one after the other once this one ends, 0-based. */
  readonly machineNext: readonly number[];
  /** The operator stands until the machine stops: then the element in hand begins. */
  readonly isWaiting: boolean;
  /** Snapback: the watch stands. */
  readonly isHeld: boolean;
  /** Why the element in hand will be left out; null when it will not. */
  readonly cause: string | null;
  /** The word on the element in hand; empty when there is none. */
  readonly note: string;
  /** Running watch at which the element in hand began, milliseconds. */
  readonly beganAtMs: number;
  /** Time inside the element in hand that was timed apart, milliseconds. */
  readonly apartMs: number;
  /** The last record and its place on the running watch. */
  readonly lastStamp: Stamp;
  readonly lastAtMs: number;
}

/** The elements that come in every cycle, as places in the heading's list. */
export function cycleOrder(elements: readonly ElementDefinition[]): number[] {
  return elements.flatMap((element, index) => (element.elementClass === 'repetitive' ? [index] : []));
}

/** Whether a method can be timed in two lanes: it has work of both, the operator's and the machine's. */
export function hasTwoLanes(elements: readonly ElementDefinition[]): boolean {
  const order = cycleOrder(elements);
  const machines = order.filter((index) => elements[index]?.work === 'machine');
  return machines.length > 0 && machines.length < order.length;
}

/** Whether such a method has work that is done while the machine runs: one lane cannot see both at once. */
export function hasWorkInRun(elements: readonly ElementDefinition[]): boolean {
  const isInRun = (index: number) =>
    elements[index]!.work !== 'machine' && elements[index]!.placement === 'internal';
  return hasTwoLanes(elements) && cycleOrder(elements).some(isInRun);
}

/** The watch before anything was tapped. */
export function idleWatch(lastStamp: Stamp): StudyWatch {
  return {
    cycle: 0,
    elementIndex: -1,
    merged: [],
    aside: null,
    machine: null,
    machineNext: [],
    isWaiting: false,
    isHeld: false,
    cause: null,
    note: '',
    beganAtMs: 0,
    apartMs: 0,
    lastStamp,
    lastAtMs: 0,
  };
}
