import { recordKey } from '../../domain/records/record-key';
import type { Stamp } from '../../domain/records/stamp';
import type { Bench } from '../bench';
import type { WallRange } from '../ports/record-log';

/** A turn's id and the moment it began. */
export interface TurnStart {
  readonly id: string;
  readonly stamp: Stamp;
}

/**
 * The turns that began in a span of wall time, oldest first. The turn in hand is among them even while the
 * log has refused it: what was tapped is shown, whether or not it is saved.
 */
export async function readTurnStarts(bench: Bench, range: WallRange): Promise<TurnStart[]> {
  const records = await bench.log.readStarts('turn', range);
  const starts = records.map((record): TurnStart => ({ id: recordKey(record), stamp: record.stamp }));
  const inHand = bench.turn.peek();
  const isMissing = inHand && !starts.some(({ id }) => id === inHand.id);
  if (!isMissing) return starts;
  const { wallMs } = inHand.startedAt;
  const isInRange = wallMs >= range.fromWallMs && wallMs <= range.toWallMs;
  if (!isInRange) return starts;
  const all = [...starts, { id: inHand.id, stamp: inHand.startedAt }];
  return all.sort((a, b) => a.stamp.wallMs - b.stamp.wallMs);
}
