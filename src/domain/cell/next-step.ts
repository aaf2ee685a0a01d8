import type { CellCycle } from './cell-cycle';
import { type ElementEffect, type KindEffect, kindOf, type WorkKindOfCell } from './element-effects';

/** What the cell does on one part. */
export interface PartInCell {
  readonly partCode: string;
  readonly cycle: CellCycle;
  readonly effects: readonly ElementEffect[];
  readonly kinds: Readonly<Record<WorkKindOfCell, KindEffect>>;
}

/** What to shorten next: the kind of work that pays on most parts, and on which. */
export interface NextStep {
  readonly kind: WorkKindOfCell;
  readonly paysOn: readonly string[];
  /** The element of that kind with the largest effect, summed over the parts. */
  readonly element: string;
  /** Parts on which a faster machine is what pays: it governs there. */
  readonly machineOn: readonly string[];
  /** Parts on which hands and machine take turns at it. */
  readonly tieOn: readonly string[];
}

/** Shortening pays where at least so much of the time saved turns up as output. */
const PAYS = 0.75;

/**
 * What a cell that makes these parts should do next: shorten what pays on most of them; where two pay on as many,
 * what gives more. Null without parts.
 */
export function nextStep(parts: readonly PartInCell[]): NextStep | null {
  if (parts.length === 0) return null;
  const candidates = (['outside', 'inside', 'machine', 'other'] as const).map((kind) => ({
    kind,
    paysOn: parts.filter(({ kinds }) => kinds[kind].realised >= PAYS).map(({ partCode }) => partCode),
    gain: parts.reduce((sum, { kinds }) => sum + kinds[kind].gain, 0),
  }));
  const [best] = candidates.sort((a, b) => b.paysOn.length - a.paysOn.length || b.gain - a.gain);
  const { kind, paysOn } = best!;
  const gains = new Map<string, number>();
  for (const { name, place, gain } of parts.flatMap(({ effects }) => effects)) {
    if (kindOf[place] === kind) gains.set(name, (gains.get(name) ?? 0) + gain);
  }
  const [element] = [...gains].sort((a, b) => b[1] - a[1]);
  const on = (governs: CellCycle['governs']) =>
    parts.filter(({ cycle }) => cycle.governs === governs).map(({ partCode }) => partCode);
  return { kind, paysOn, element: element?.[0] ?? '', machineOn: on('machine'), tieOn: on('tie') };
}
