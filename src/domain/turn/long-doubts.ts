import { median } from '../../statistics/median';
import type { Doubt } from './doubt';
import type { PartTapped } from './part-tapped';
import type { Cycle } from './turn';

/** As many parts as `judgeCycles` looks back over. */
const RECENT = 5;

/**
 * What is asked of parts that took about twice as long, or far longer: one question for a tap, of however many parts.
 *
 * @param judged as `judgeCycles` left them, so that what is usual is what it compared with: a part that is later asked
 * about as another part is in no mean, and still says what came before
 */
export function longDoubts(
  judged: readonly Cycle[],
  parts: readonly PartTapped[],
  netTimesMs: readonly number[],
): Doubt[] {
  const inDoubt = new Map<string, Cycle>();
  for (const cycle of judged)
    if (cycle.doubt === 'two-parts' || cycle.doubt === 'long-part') inDoubt.set(cycle.key, cycle);
  if (inDoubt.size === 0) return [];
  return parts.flatMap(({ key, fromMs, toMs }, place): Doubt[] => {
    const cycle = inDoubt.get(key);
    if (cycle?.doubt === 'two-parts') {
      const eachMs = Math.round(netTimesMs[place]! / 2 / cycle.together);
      return [{ kind: 'two-parts', key, fromMs, toMs, suggestion: { eachMs, together: cycle.together } }];
    }
    if (!cycle) return [];
    const isUsual = ({ part, together, isCounted }: Cycle) =>
      isCounted && part === cycle.part && together === cycle.together;
    const before = judged.slice(0, judged.indexOf(cycle)).filter(isUsual);
    const usual = before.length < RECENT ? judged.filter(isUsual).slice(0, RECENT) : before.slice(-RECENT);
    const usualMs = median(usual.map(({ netMs }) => netMs)) * cycle.together;
    return [{ kind: 'long-part', key, fromMs, toMs, suggestion: { usualMs } }];
  });
}
