import type { LogRecord } from '../../../src/domain/records/log-record';
import type { Stamp } from '../../../src/domain/records/stamp';
import type { PartInHand, TurnFact } from '../../../src/domain/records/turn-fact';
import { recordAt } from '../../support/records';

export const partM: PartInHand = { part: 't:1', partCode: 'M', targetMs: 90_000 };
export const partL: PartInHand = { part: 't:2', partCode: 'L', targetMs: 150_000 };
export const partN: PartInHand = { part: 't:3', partCode: 'N', targetMs: null };

/** One line of a turn: when it happened in seconds after the start, and what. */
export type Line = readonly [seconds: number, fact: TurnFact, stamp?: Stamp];

/** The records of a turn of K7 that begins on part M at second 0; its taps are numbered 11, 12, 13 … */
export function turnRecords(lines: readonly Line[], inHand = partM): LogRecord[] {
  const start = { kind: 'turn-started', starts: 'turn', person: 'K7', ...inHand } as const;
  return [
    recordAt(10, 0, 't:10', start),
    ...lines.map(([seconds, fact, stamp], place) =>
      recordAt(11 + place, seconds * 1_000, 't:10', fact, stamp ? { stamp } : {}),
    ),
  ];
}

export const done = (part = partM): TurnFact => ({ kind: 'part-done', ...part });
export const change = (part: PartInHand): TurnFact => ({ kind: 'part-changed', ...part });
/** A change of part as the screen writes it: what the time before it was is asked. */
export const changeAsked = (part: PartInHand): TurnFact => ({
  kind: 'part-changed',
  ...part,
  before: 'asked',
});
export const beforeChange = (
  number: number,
  as: Extract<TurnFact, { kind: 'change-explained' }>['as'],
): TurnFact => ({ kind: 'change-explained', change: `t:${number}`, as });
export const stopped: TurnFact = { kind: 'stopped' };
export const resumed: TurnFact = { kind: 'resumed' };
export const ended: TurnFact = { kind: 'turn-ended' };
export const undone = (number: number): TurnFact => ({ kind: 'undone', of: `t:${number}` });
export const judged = (number: number, outcome: 'good' | 'rework' | 'scrap'): TurnFact => ({
  kind: 'part-judged',
  partDone: `t:${number}`,
  outcome,
});
export const gapIs = (number: number, as: Extract<TurnFact, { kind: 'gap-explained' }>['as']): TurnFact => ({
  kind: 'gap-explained',
  gap: `t:${number}`,
  as,
});
export const counted = (number: number): TurnFact => ({ kind: 'tap-counted', tap: `t:${number}` });
export const cycleIs = (
  number: number,
  as: 'one-part' | 'two-parts' | 'interrupted' | 'first-off',
): TurnFact => ({
  kind: 'cycle-judged',
  partDone: `t:${number}`,
  as,
});
export const explained = (
  number: number,
  reason: string,
  category: 'stoppage' | 'planned-break' | 'called-away' | 'set-up',
): TurnFact => ({ kind: 'stoppage-explained', stoppage: `t:${number}`, reason, label: '', category });
