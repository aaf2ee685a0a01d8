import type { StudyHeading } from '../records/study-fact';
import type { ExclusionCause } from './exclusion-cause';
import { type ClockFlag, clockFlags, type Reading, type StudyWatch } from './study';
import type { StudyRow } from './study-row';

/** A study while its records are read one after the other. */
export interface WatchInHand {
  readonly heading: StudyHeading;
  /** What stands on every row alike. */
  readonly carried: Readonly<Record<string, string>>;
  /** The elements that come in every cycle, as places in the heading's list. */
  readonly order: readonly number[];
  /** Two lanes: the machine elements that begin as an element of the operator ends; under −1 those that run first. */
  readonly after: ReadonlyMap<number, readonly number[]>;
  /** One lane: internal elements that are tapped once the machine has stopped, 0-based. */
  readonly behindRun: ReadonlySet<number>;
  readonly readings: Reading[];
  readonly waits: { readonly cycle: number; readonly observedMs: number }[];
  readonly watch: { -readonly [K in keyof StudyWatch]: StudyWatch[K] };
  /** What is to be said of every reading alike. */
  readonly everyFlag: ClockFlag;
  /** What the clocks did inside the element in hand. */
  clockFlag: ClockFlag;
}

/** Nobody saw the element through: it stays out of the mean until a person says otherwise. */
export function outByClock(flag: ClockFlag): ExclusionCause | null {
  if (flag === 'slept') return 'tablet-slept';
  return flag === 'gone' ? 'page-reloaded' : null;
}

/** A clock that was not trusted marks both lanes; of two flags the one that says more stays. */
export function flagClock(study: WatchInHand, flag: ClockFlag): void {
  const { watch } = study;
  const worse = (now: ClockFlag) => (clockFlags.indexOf(flag) > clockFlags.indexOf(now) ? flag : now);
  study.clockFlag = worse(study.clockFlag);
  if (watch.machine) watch.machine = { ...watch.machine, clockFlag: worse(watch.machine.clockFlag) };
}

export const FOREIGN_ELEMENT = 'Foreign element';

/** The row of a reading, with all that makes it stand alone. */
export function newReading(
  { heading, carried, clockFlag, behindRun }: WatchInHand,
  id: string,
  what: Pick<StudyRow, 'cycle' | 'observedMs' | 'ratingPct' | 'excluded'> & {
    /** Null for a foreign element. */
    readonly elementIndex: number | null;
    readonly note?: string;
    readonly isMerged?: boolean;
    readonly clockFlag?: ClockFlag;
    readonly isBeside?: boolean;
    readonly judged?: boolean | undefined;
  },
): Reading {
  const element = what.elementIndex === null ? null : heading.elements[what.elementIndex];
  const { allowancePct, basis, machineAllowancePct } = heading.terms;
  const note = what.note ?? '';
  const flag = what.clockFlag ?? clockFlag;
  return {
    id,
    isMerged: what.isMerged ?? false,
    ...(what.isBeside ? { isBeside: true } : {}),
    ...(what.judged === undefined ? {} : { judged: what.judged }),
    row: {
      study: heading.title,
      cycle: what.cycle,
      element: element?.name ?? foreignName(note, heading),
      elementNo: what.elementIndex === null ? heading.elements.length + 1 : what.elementIndex + 1,
      elementClass: element?.elementClass ?? 'foreign',
      work: element?.work ?? 'manual',
      // What was seen after the stop was not done in the run, whatever the method says.
      placement: behindRun.has(what.elementIndex ?? -1) ? 'external' : (element?.placement ?? 'external'),
      unitsPerOccurrence: element?.unitsPerOccurrence ?? 1,
      partsPerCycle: heading.partsPerCycle,
      observedMs: what.observedMs,
      ratingPct: what.ratingPct,
      excluded: what.excluded,
      allowancePct,
      allowanceBasis: basis,
      machineAllowancePct,
      carried: { ...carried, note: element ? note : '', clock_flag: flag === 'gone' ? 'reloaded' : flag },
    },
  };
}

/** A foreign element goes by its note, but never by the name of an element of the method. */
export function foreignName(note: string, heading: StudyHeading | null): string {
  if (note === '') return FOREIGN_ELEMENT;
  return heading?.elements.some(({ name }) => name === note) ? `${FOREIGN_ELEMENT}: ${note}` : note;
}
