import type { CellElement, CellPlace, CellWork } from './cell-work';

/** What might be done differently. Everything in percent is of the time as it is. */
export interface CellChange {
  /** 125: the machine works a quarter faster, but for the time that speed does not change. */
  readonly machineSpeedPct: number;
  readonly passes: number;
  /** Of the machine's time, what neither speed nor passes change: closing, clamping, running home. Milliseconds. */
  readonly fixedMachineMs: number;
  /** Time of the operator's work at the standing machine, walking left out. */
  readonly loadingPct: number;
  /** Time of single elements, by name. */
  readonly elementPct: Readonly<Record<string, number>>;
  /** Elements done elsewhere than now, by name. */
  readonly moved: Readonly<Record<string, CellPlace>>;
  readonly machines: number;
}

export const noChange: CellChange = {
  machineSpeedPct: 100,
  passes: 1,
  fixedMachineMs: 0,
  loadingPct: 100,
  elementPct: {},
  moved: {},
  machines: 1,
};

/**
 * The work as it would be. Machine time is fixed + (time − fixed)·passes·100/speed; hand time is scaled.
 *
 * @throws {RangeError} changedWork requires a speed above 0, passes from 1 and percentages from 0
 */
export function changedWork(work: CellWork, change: CellChange): CellWork {
  const { machineSpeedPct, passes, fixedMachineMs, loadingPct, elementPct, moved } = change;
  const percentages = [fixedMachineMs, loadingPct, ...Object.values(elementPct)];
  if (!(machineSpeedPct > 0 && passes >= 1 && percentages.every((percent) => percent >= 0))) {
    throw new RangeError('changedWork requires a speed above 0, passes from 1 and percentages from 0');
  }
  const timeOf = ({ name, place, work: kind }: CellElement) => {
    const own = (elementPct[name] ?? 100) / 100;
    if (place === 'machine') {
      const faster = (100 * passes) / machineSpeedPct;
      return (time: number) => {
        const fixed = Math.min(fixedMachineMs, time);
        return own * (fixed + (time - fixed) * faster);
      };
    }
    const isLoading = place === 'external' && kind !== 'walking';
    return (time: number) => own * time * (isLoading ? loadingPct / 100 : 1);
  };
  const elements = work.elements.map((element): CellElement => {
    const changed = timeOf(element);
    const timesMs = element.timesMs.map(changed);
    return {
      ...element,
      // What the machine does cannot be given to a person.
      place: element.place === 'machine' ? 'machine' : (moved[element.name] ?? element.place),
      timesMs,
      meanMs: timesMs.reduce((sum, time) => sum + time, 0) / timesMs.length,
    };
  });
  return { ...work, elements };
}
