import { recordKey } from '../../domain/records/record-key';
import { overlappingTurns, type TurnOverlap } from '../../domain/turn/overlapping-turns';
import { turnSpans } from '../../domain/turn/turn-span';
import type { RecordLog, WallRange } from '../ports/record-log';

/** A turn that began earlier than this has ended, or was left open and is asked about elsewhere. */
const LONGEST_TURN_MS = 86_400_000;

/**
 * Turns of one person that overlap on two tablets, among those around a span of wall time. Where all turns are of
 * one tablet none is read.
 */
export async function readTurnOverlaps(log: RecordLog, range?: WallRange): Promise<TurnOverlap[]> {
  const around = range && {
    fromWallMs: range.fromWallMs - LONGEST_TURN_MS,
    toWallMs: range.toWallMs + LONGEST_TURN_MS,
  };
  const starts = await log.readStarts('turn', around);
  if (new Set(starts.map(({ device }) => device)).size < 2) return [];
  const spans = [];
  // Who took over in the course of a turn stands in its records alone.
  for (const start of starts) spans.push(...turnSpans(await log.readStream(recordKey(start))));
  return overlappingTurns(spans);
}
