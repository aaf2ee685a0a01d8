import { recordKey } from '../../domain/records/record-key';
import { foldAnyTurn } from '../../domain/turn/fold-any-turn';
import type { Bench } from '../bench';

/** A turn that was open when the shop said so has parts of it too. */
const LONGEST_TURN_MS = 86_400_000;

/**
 * Notes in the turn in hand how many parts of whoever is there are still made while learning: those that the shop
 * set, less those made since. Nothing is noted for anybody else.
 */
export async function planLearning(bench: Bench): Promise<void> {
  const turn = bench.turn.peek();
  const learner = bench.shop.peek().learners.find(({ code }) => code === turn?.person);
  if (!turn || !learner) return;
  const starts = await bench.log.readStarts('turn', {
    fromWallMs: learner.sinceWallMs - LONGEST_TURN_MS,
    toWallMs: Number.MAX_SAFE_INTEGER,
  });
  let made = 0;
  for (const start of starts) {
    const id = recordKey(start);
    if (id === turn.id) continue;
    const { cycles } = foldAnyTurn(await bench.log.readStream(id));
    made += cycles.filter(
      ({ person, doneAt }) => person === learner.code && doneAt.wallMs > learner.sinceWallMs,
    ).length;
  }
  const now = bench.turn.peek();
  if (now?.id !== turn.id || now.status === 'ended' || now.person !== learner.code) return;
  const own = now.cycles.filter(({ person }) => person === learner.code).length;
  const parts = learner.parts - made - own;
  if (parts > 0) bench.record(turn.id, [{ kind: 'learning-noted', person: learner.code, parts }]);
}
