import type { CellCycle } from './cell-cycle';
import type { ElementEffect, KindEffects } from './element-effects';

export type WorkOfCell = keyof KindEffects;

/** What the cell does on one part. */
export interface PartInCell {
  readonly partCode: string;
  readonly cycle: CellCycle;
  readonly effects: readonly ElementEffect[];
  readonly kinds: KindEffects;
}

/** What to shorten next: the kind of work that pays on most parts, and on which. */
export interface NextStep {
  readonly kind: WorkOfCell;
  readonly paysOn: readonly string[];
  /** The element of that kind with the largest effect, summed over the parts. */
  readonly element: string;
  /** Parts on which a faster machine is what pays: it governs there. */
  readonly machineOn: readonly string[];
  /** Parts on which hands and machine take turns at it. */
  readonly tieOn: readonly string[];
}

/** Below this, 1 % off a kind of work changes the output by less than anybody could see: 0.02 %. */
const PAYS = 0.0002;

const placesOf: Record<WorkOfCell, readonly ElementEffect['place'][]> = {
  outside: ['external', 'occasional'],
  inside: ['internal'],
  machine: ['machine'],
  other: ['other'],
};

/**
 * What a cell that makes these parts should do next: shorten what pays on most of them; where two pay on as many,
 * what pays more. Null without parts.
 */
export function nextStep(parts: readonly PartInCell[]): NextStep | null {
  if (parts.length === 0) return null;
  const order: readonly WorkOfCell[] = ['outside', 'inside', 'machine', 'other'];
  const candidates = order.map((kind) => ({
    kind,
    paysOn: parts.filter(({ kinds }) => kinds[kind] > PAYS).map(({ partCode }) => partCode),
    gain: parts.reduce((sum, { kinds }) => sum + kinds[kind], 0),
  }));
  const [best] = candidates.sort((a, b) => b.paysOn.length - a.paysOn.length || b.gain - a.gain);
  const { kind, paysOn } = best!;
  const gains = new Map<string, number>();
  for (const { name, place, gain } of parts.flatMap(({ effects }) => effects)) {
    if (placesOf[kind].includes(place)) gains.set(name, (gains.get(name) ?? 0) + gain);
  }
  const [element] = [...gains].sort((a, b) => b[1] - a[1]);
  const on = (governs: CellCycle['governs']) =>
    parts.filter(({ cycle }) => cycle.governs === governs).map(({ partCode }) => partCode);
  return { kind, paysOn, element: element?.[0] ?? '', machineOn: on('machine'), tieOn: on('tie') };
}
