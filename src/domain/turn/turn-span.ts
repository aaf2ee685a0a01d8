import type { LogRecord } from '../records/log-record';
import { recordKey } from '../records/record-key';

/** From when to when a person was at a tablet, by its wall clock: all that two tablets have in common. */
export interface TurnSpan {
  /** Key of the record that began the turn. */
  readonly id: string;
  readonly device: string;
  readonly person: string;
  readonly fromWallMs: number;
  readonly toWallMs: number;
}

/**
 * The span of a turn from its records; of one that has not ended, up to its last record. Null for records that
 * begin no turn.
 */
export function turnSpan(records: readonly LogRecord[]): TurnSpan | null {
  const start = records.find(({ fact }) => fact.kind === 'turn-started');
  if (start?.fact.kind !== 'turn-started') return null;
  const fromWallMs = start.stamp.wallMs;
  const corrected = records.findLast(({ fact }) => fact.kind === 'person-corrected');
  const { person } = corrected?.fact.kind === 'person-corrected' ? corrected.fact : start.fact;
  const end = records.find(({ fact }) => fact.kind === 'turn-ended') ?? records.at(-1)!;
  return {
    id: recordKey(start),
    device: start.device,
    person,
    fromWallMs,
    // A clock that was set back during the turn.
    toWallMs: Math.max(fromWallMs, end.stamp.wallMs),
  };
}
