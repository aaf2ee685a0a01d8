import type { LogRecord } from '../records/log-record';
import { placeOnTimeline } from '../records/place-on-timeline';
import { recordKey } from '../records/record-key';
import { withoutUndone } from '../records/without-undone';
import { peopleLine } from './people-line';

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
 * Who was at the tablet in a turn, and from when to when, from its records; in one that has not ended, up to its
 * last record. None for records that begin no turn, or one that was taken away again.
 */
export function turnSpans(records: readonly LogRecord[]): TurnSpan[] {
  const start = records.find(({ fact }) => fact.kind === 'turn-started');
  if (start?.fact.kind !== 'turn-started') return [];
  const { wallMs } = start.stamp;
  const end = records.find(({ fact }) => fact.kind === 'turn-ended') ?? records.at(-1)!;
  const { enteredLater } = start.fact;
  // A clock that was set back during the turn.
  const endWallMs = enteredLater ? wallMs + enteredLater.lastedMs : Math.max(wallMs, end.stamp.wallMs);
  if (enteredLater && records.some(({ fact }) => fact.kind === 'turn-withdrawn')) return [];
  const line = peopleLine(start.fact.person, withoutUndone(placeOnTimeline(records)));
  return line.map(({ person, fromMs, toMs }) => ({
    id: recordKey(start),
    device: start.device,
    person,
    fromWallMs: Math.min(endWallMs, wallMs + fromMs),
    toWallMs: Math.min(endWallMs, wallMs + toMs),
  }));
}
