import { type TurnSpan, turnSpans } from '../../domain/turn/turn-span';
import type { Bench } from '../bench';
import { readTurnStarts } from '../review/read-turn-starts';

/** No turn is longer than a day. */
const LONGEST_MS = 86_400_000;

/** Who was where while a turn is said to have been, in order: nobody is in two turns at once. */
export async function turnsInTheWay(
  bench: Bench,
  { fromWallMs, toWallMs }: { fromWallMs: number; toWallMs: number },
): Promise<TurnSpan[]> {
  const starts = await readTurnStarts(bench, { fromWallMs: fromWallMs - LONGEST_MS, toWallMs });
  const spans: TurnSpan[] = [];
  for (const { id } of starts) spans.push(...turnSpans(await bench.log.readStream(id)));
  return spans.filter((span) => span.fromWallMs < toWallMs && span.toWallMs > fromWallMs);
}
