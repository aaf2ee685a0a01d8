import { groupBy } from '../../domain/group-by';
import { recordKey } from '../../domain/records/record-key';
import { overlappingTurns, type TurnOverlap } from '../../domain/turn/overlapping-turns';
import { turnSpan } from '../../domain/turn/turn-span';
import type { RecordLog, WallRange } from '../ports/record-log';

/** A turn that began earlier than this has ended, or was left open and is asked about elsewhere. */
const LONGEST_TURN_MS = 86_400_000;

/**
 * Turns of one person that overlap on two tablets, among those around a span of wall time. Only the turns of
 * people who were at more than one tablet are read.
 */
export async function readTurnOverlaps(log: RecordLog, range?: WallRange): Promise<TurnOverlap[]> {
  const around = range && {
    fromWallMs: range.fromWallMs - LONGEST_TURN_MS,
    toWallMs: range.toWallMs + LONGEST_TURN_MS,
  };
  const starts = await log.readStarts('turn', around);
  const byPerson = groupBy(starts, ({ fact }) => (fact.kind === 'turn-started' ? fact.person : ''));
  const spans = [];
  for (const own of byPerson.values()) {
    if (new Set(own.map(({ device }) => device)).size < 2) continue;
    for (const start of own) {
      const span = turnSpan(await log.readStream(recordKey(start)));
      if (span) spans.push(span);
    }
  }
  return overlappingTurns(spans);
}
