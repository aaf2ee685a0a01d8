import type { Fact } from '../../../src/domain/records/log-record';
import type { PartInHand, TurnFact } from '../../../src/domain/records/turn-fact';
import { foldTurn } from '../../../src/domain/turn/fold-turn';
import type { Turn } from '../../../src/domain/turn/turn';
import { recordAt, stampAt } from '../../support/records';

/** Part M with a target of 90 s. */
export const partM: PartInHand = { part: 'p-m', partCode: 'M', targetMs: 90_000 };
export const partV: PartInHand = { part: 'p-v', partCode: 'V', targetMs: 130_000 };

/**
 * A turn from what happened at which second. It begins with `first`; record 1 is the start, so the first fact
 * of the list is record `t:2` (with its own `sequence` offset when a day has several turns).
 */
export function turnOf(
  happened: readonly (readonly [atS: number, fact: TurnFact])[],
  {
    first = partM,
    beginsAtS = 0,
    sequence = 1,
  }: { first?: PartInHand; beginsAtS?: number; sequence?: number } = {},
): Turn {
  const facts: [number, Fact][] = [
    [0, { kind: 'turn-started', starts: 'turn', person: 'K7', ...first }],
    ...happened.map(([atS, fact]): [number, Fact] => [atS, fact]),
  ];
  const stream = `t:${sequence}`;
  return foldTurn(
    facts.map(([atS, fact], place) =>
      recordAt(sequence + place, 0, stream, fact, { stamp: stampAt((beginsAtS + atS) * 1_000) }),
    ),
  );
}

export function done(part: PartInHand = partM): TurnFact {
  return { kind: 'part-done', ...part };
}
