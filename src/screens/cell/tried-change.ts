import { type CellChange, noChange } from '../../domain/cell/cell-change';
import { cell as words } from '../../i18n/en/cell';
import { cellWhatIf as says } from '../../i18n/en/cell-what-if';
import { formatNumber } from '../../i18n/format-number';
import type { Setup } from './plan-cell';
import type { ReckonedPart } from './reckon-parts';

type Lots = Omit<Setup, 'machines'>;

/** What somebody tries on a part: it stays while other pages of the cell are looked at. */
export interface TriedChange {
  readonly change: CellChange;
  /** Only what is to be another than now. */
  readonly lots: Partial<Lots>;
  readonly seed: number;
}

/** By the key of the part. */
export type Tried = Readonly<Record<string, TriedChange>>;

export const nothingTried: TriedChange = { change: noChange, lots: {}, seed: 1 };

/** One change among those tried, in words, and what is tried without it. */
export interface ActiveChange {
  readonly text: string;
  readonly without: TriedChange;
  readonly isLots: boolean;
}

const MINUTE_MS = 60_000;
const percent = (value: number) => words.percent(formatNumber(value));

/** Everything that is tried on a part, one by one. */
export function activeChanges(tried: TriedChange, part: ReckonedPart, now: Lots): ActiveChange[] {
  const { change, lots } = tried;
  const without = (to: Partial<CellChange>) => ({ ...tried, change: { ...change, ...to } });
  const plain = (['machineSpeedPct', 'passes', 'fixedMachineMs', 'loadingPct', 'machines'] as const)
    .filter((name) => change[name] !== noChange[name])
    .map((name) => ({ text: textOf(name, change[name]), without: without({ [name]: noChange[name] }) }));
  const times = Object.entries(change.elementPct)
    .filter(([, value]) => value !== 100)
    .map(([name, value]) => ({
      text: says.of(name, percent(value)),
      without: without({ elementPct: { ...change.elementPct, [name]: 100 } }),
    }));
  const moves = Object.entries(change.moved).filter(
    ([name, place]) => part.work.elements.find((own) => own.name === name)?.place !== place,
  );
  // What a person takes over together is one change.
  const places = (['external', 'internal', 'other'] as const).flatMap((place) => {
    const names = moves.filter(([, to]) => to === place).map(([name]) => name);
    const moved = Object.fromEntries(moves.filter(([, to]) => to !== place));
    return names.length > 0
      ? [{ text: says.of(says.places[place], names.join(', ')), without: without({ moved }) }]
      : [];
  });
  const sizes = (Object.keys(lots) as (keyof Lots)[])
    .filter((name) => lots[name] !== undefined && lots[name] !== now[name])
    .map((name) => {
      const { [name]: _, ...others } = lots;
      return { text: says.of(says[name], formatNumber(lots[name]!)), without: { ...tried, lots: others } };
    });
  const inWork = [...plain, ...times, ...places].map((own) => ({ ...own, isLots: false }));
  return [...inWork, ...sizes.map((own) => ({ ...own, isLots: true }))];
}

function textOf(
  name: 'machineSpeedPct' | 'passes' | 'fixedMachineMs' | 'loadingPct' | 'machines',
  value: number,
) {
  if (name === 'machineSpeedPct') return says.of(says.speed, percent(value));
  if (name === 'loadingPct') return says.of(says.loading, percent(value));
  if (name === 'fixedMachineMs') return says.of(says.fixed, formatNumber(value / MINUTE_MS, 2));
  return says.of(name === 'passes' ? says.passes : says.machines, formatNumber(value));
}
