import { ENOUGH_CYCLES } from './cycle-precision';
import { type ElementEffect, kindOf, type WorkKindOfCell } from './element-effects';
import type { SecondOut } from './second-out';

/** What the cell does on one part. */
export interface PartInCell {
  readonly partCode: string;
  /** Timed cycles in which every element was read. */
  readonly wholeCycles: number;
  readonly effects: readonly ElementEffect[];
  readonly seconds: Readonly<Record<WorkKindOfCell, SecondOut | null>>;
}

/** On which parts a kind of work pays, by what a second less of it gives. */
export interface PaysOn {
  readonly fully: readonly string[];
  readonly partly: readonly string[];
  readonly not: readonly string[];
}

/** What to shorten next: the kind of work that pays on most parts. */
export interface NextStep {
  readonly kind: WorkKindOfCell;
  /** The element of that kind with the largest effect, summed over the parts. */
  readonly element: string;
  readonly pays: Readonly<Record<WorkKindOfCell, PaysOn>>;
}

/** A second less pays where about a second turns up, and not at all where next to nothing does. */
const FULLY = 0.75;
const NOTHING = 0.05;

const kinds = ['outside', 'inside', 'machine', 'other'] as const satisfies readonly WorkKindOfCell[];

/**
 * What a cell that makes these parts should do next: shorten what pays, second for second, on most of them; where two
 * pay on as many, what gives more. Null while no part has cycles enough to tell.
 */
export function nextStep(all: readonly PartInCell[]): NextStep | null {
  const parts = all.filter(({ wholeCycles }) => wholeCycles >= ENOUGH_CYCLES);
  if (parts.length === 0) return null;
  const gained = (kind: WorkKindOfCell, { seconds }: PartInCell) => seconds[kind]?.gained ?? 0;
  const on = (belongs: (part: PartInCell) => boolean) =>
    parts.filter(belongs).map(({ partCode }) => partCode);
  const paysOf = (kind: WorkKindOfCell): PaysOn => ({
    fully: on((part) => gained(kind, part) >= FULLY),
    partly: on((part) => gained(kind, part) >= NOTHING && gained(kind, part) < FULLY),
    not: on((part) => gained(kind, part) < NOTHING),
  });
  const pays = Object.fromEntries(kinds.map((kind) => [kind, paysOf(kind)])) as Record<
    WorkKindOfCell,
    PaysOn
  >;
  const sum = (kind: WorkKindOfCell) => parts.reduce((total, part) => total + gained(kind, part), 0);
  const [kind] = [...kinds].sort(
    (a, b) =>
      pays[b].fully.length - pays[a].fully.length || sum(b) - sum(a) || gainOf(b, parts) - gainOf(a, parts),
  );
  const gains = new Map<string, number>();
  for (const { name, place, gain } of parts.flatMap(({ effects }) => effects)) {
    if (kindOf[place] === kind) gains.set(name, (gains.get(name) ?? 0) + gain);
  }
  const [element] = [...gains].sort((a, b) => b[1] - a[1]);
  return { kind: kind!, element: element?.[0] ?? '', pays };
}

/** What 1 % off all of a kind gives, summed over the parts: where seconds count alike, there is more of it. */
function gainOf(kind: WorkKindOfCell, parts: readonly PartInCell[]): number {
  return parts
    .flatMap(({ effects }) => effects)
    .reduce((sum, { place, gain }) => sum + (kindOf[place] === kind ? gain : 0), 0);
}
