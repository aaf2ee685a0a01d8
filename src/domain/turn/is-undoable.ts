import type { TurnFact } from '../records/turn-fact';

/** Taps that move the turn on. */
const taps: ReadonlySet<string> = new Set<TurnFact['kind']>([
  'part-begun',
  'element-done',
  'part-done',
  'part-changed',
  'person-changed',
  'stopped',
  'resumed',
]);
/** Answers to a question that the taps left open. */
const answers: ReadonlySet<string> = new Set<TurnFact['kind']>([
  'gap-explained',
  'tap-counted',
  'tap-left-out',
  'cycle-judged',
  'change-explained',
]);

/** What Undo at the station may take back: a tap, and what was answered there; not what somebody else said elsewhere. */
export function isUndoable(fact: { readonly kind: string; readonly by?: string }): boolean {
  return taps.has(fact.kind) || (answers.has(fact.kind) && fact.by === undefined);
}
