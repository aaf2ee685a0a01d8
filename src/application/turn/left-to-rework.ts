import { type LeftToRework, stillWaiting } from '../../domain/turn/left-to-rework';
import type { Bench } from '../bench';
import { recentTurns } from './recent-turns';

/**
 * Parts that the turns before left to be reworked at this tablet, whoever made them; not those of the turn in hand. It
 * looks as far back as a forecast does.
 */
export async function leftToRework(bench: Bench): Promise<LeftToRework[]> {
  return stillWaiting(await recentTurns(bench), `${bench.log.device}:`);
}
