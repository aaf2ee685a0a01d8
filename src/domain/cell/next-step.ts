import type { CellWork } from './cell-work';
import { ENOUGH_CYCLES } from './cycle-precision';
import { type ElementEffect, elementEffects, kindOf } from './element-effects';
import { mixedWork } from './mixed-work';
import type { SecondOut, WorkKindOfCell } from './second-out';

/** What the cell does on one part. */
export interface PartInCell {
  readonly partCode: string;
  readonly work: CellWork;
  /** Timed cycles in which every element was read. */
  readonly wholeCycles: number;
  readonly effects: readonly ElementEffect[];
  readonly seconds: Readonly<Record<WorkKindOfCell, SecondOut | null>>;
}

/** On which parts a kind of work pays, by what a second less of it gives; of a machine, only those that have one. */
export interface PaysOn {
  readonly fully: readonly string[];
  readonly partly: readonly string[];
  readonly not: readonly string[];
}

/** What to shorten next: the kind of work that pays on most parts. */
export interface NextStep {
  readonly kind: WorkKindOfCell;
  /** The element of that kind to begin with: a second less of it gives most, and it takes longest. */
  readonly first: ElementEffect;
  /** The element of any kind of which a tenth less gives most. */
  readonly mostByTenth: ElementEffect;
  /** No element of another kind gives more for a second. */
  readonly isMostBySecond: boolean;
  readonly pays: Readonly<Record<WorkKindOfCell, PaysOn>>;
  /** That element is work on a part without a machine: no standing one is to be spoken of. */
  readonly isWithoutMachine: boolean;
  /** The parts that this is told from, in as many of each where nothing tells how they are made together. */
  readonly parts: readonly string[];
}

/** A second less pays where about a second turns up, and not at all where next to nothing does. */
const FULLY = 0.75;
const NOTHING = 0.05;

const kinds = ['outside', 'inside', 'machine', 'other'] as const satisfies readonly WorkKindOfCell[];

/**
 * What a cell that makes these parts should do next: shorten what pays, second for second, on most of them; where two
 * pay on as many, what gives more. With which element to begin is told by the parts as they are made together, where
 * that is known, else by as many of each. Null while no part has cycles enough to tell.
 */
export function nextStep(all: readonly PartInCell[], together?: PartInCell): NextStep | null {
  const parts = all.filter(({ wholeCycles }) => wholeCycles >= ENOUGH_CYCLES);
  if (parts.length === 0) return null;
  const gained = (kind: WorkKindOfCell, { seconds }: PartInCell) => seconds[kind]?.gained ?? 0;
  const paysOf = (kind: WorkKindOfCell): PaysOn => {
    const isOfMachine = kind === 'inside' || kind === 'machine';
    const asked = parts.filter(({ seconds }) => !isOfMachine || seconds.machine);
    const on = (belongs: (gain: number) => boolean) =>
      asked.filter((part) => belongs(gained(kind, part))).map(({ partCode }) => partCode);
    return {
      fully: on((gain) => gain >= FULLY),
      partly: on((gain) => gain >= NOTHING && gain < FULLY),
      not: on((gain) => gain < NOTHING),
    };
  };
  const pays = Object.fromEntries(kinds.map((kind) => [kind, paysOf(kind)])) as Record<
    WorkKindOfCell,
    PaysOn
  >;
  const sum = (kind: WorkKindOfCell) => parts.reduce((total, part) => total + gained(kind, part), 0);
  const [kind] = [...kinds].sort(
    (a, b) =>
      pays[b].fully.length - pays[a].fully.length || sum(b) - sum(a) || gainOf(b, parts) - gainOf(a, parts),
  );
  const effects = together ? together.effects : equalEffects(parts);
  const first = effects.find(({ place }) => kindOf[place] === kind);
  const [most] = effects;
  if (!first || !most) return null;
  return {
    kind: kind!,
    first,
    mostByTenth: effects.reduce((best, own) => (own.byTenth > best.byTenth ? own : best)),
    isMostBySecond: first.bySecond > most.bySecond * 0.999,
    pays,
    isWithoutMachine: parts.some(
      ({ seconds, effects: own }) =>
        !seconds.machine && own.some(({ name, place }) => name === first.name && place === first.place),
    ),
    parts: parts.map(({ partCode }) => partCode),
  };
}

/** The effect of each element where as many are made of each part; most first. */
function equalEffects(parts: readonly PartInCell[]): readonly ElementEffect[] {
  if (parts.length === 1) return parts[0]!.effects;
  return elementEffects(mixedWork(parts.map(({ work }) => ({ work, parts: 1 })))!);
}

/** What a tenth off all of a kind gives, summed over the parts: where seconds count alike, there is more of it. */
function gainOf(kind: WorkKindOfCell, parts: readonly PartInCell[]): number {
  return parts
    .flatMap(({ effects }) => effects)
    .reduce((sum, { place, byTenth }) => sum + (kindOf[place] === kind ? byTenth : 0), 0);
}
