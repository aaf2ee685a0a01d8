import type { PlacedRecord } from '../records/place-on-timeline';
import { recordKey } from '../records/record-key';

/** No part is made in less: a glove that bounces, a finger that is not sure. */
const BOUNCE_MS = 1_500;
/** Of the shortest part of the kind in this turn: a target says what is wished, not what is credible. */
const CREDIBLE_SHARE = 0.15;

/**
 * Taps that no part can lie behind: a part done within 1.5 s of the tap before it, or within 15 % of the shortest
 * part of its kind that this turn has seen, when that is longer. After Start and Go on the 1.5 s alone hold; no
 * finger bounces over a reload of the page. A tap whose time was taken otherwise than from tap to tap is never one.
 * Any tap of which a person says that it was no part is left out alike: its time is the next part's.
 *
 * Must look at every record, also those taken back: a bounce of a tap that was taken back is still a bounce.
 *
 * @param placed all records of a turn
 * @param taps what was said about such taps: true for one that was a part all the same, false for one that was none
 * @returns the key of each, with the place of the tap before it, milliseconds
 */
export function secondTaps(
  placed: readonly PlacedRecord[],
  taps: ReadonlyMap<string, boolean>,
): Map<string, number> {
  const second = new Map<string, number>();
  const standing: { key: string; atMs: number; run: string; isBegin: boolean; isResumed: boolean }[] = [];
  const shortest = new Map<string, number>();
  for (const { record, atMs } of placed) {
    const { fact, stamp } = record;
    const { run } = stamp;
    const key = recordKey(record);
    if (fact.kind === 'undone') {
      const place = standing.findLastIndex((tap) => tap.key === fact.of);
      if (place > 0) standing.splice(place, 1);
      second.delete(fact.of);
    } else if (fact.kind === 'part-done') {
      const before = standing.at(-1);
      const share = !before || before.isBegin ? 0 : CREDIBLE_SHARE * (shortest.get(fact.part) ?? 0);
      const bounceMs = before?.run === run ? BOUNCE_MS : 0;
      const isSoon = before !== undefined && atMs - before.atMs < Math.max(bounceMs, share);
      const isNone = taps.get(key) === false;
      if (before && (isNone || (isSoon && fact.touchMs === undefined && taps.get(key) !== true)))
        second.set(key, before.atMs);
      else {
        if (before && !before.isBegin) {
          const spentMs = atMs - before.atMs;
          shortest.set(fact.part, Math.min(spentMs, shortest.get(fact.part) ?? spentMs));
        }
        standing.push({ key, atMs, run, isBegin: false, isResumed: false });
      }
    } else if (fact.kind === 'stoppage-explained' && standing.at(-1)?.isResumed) {
      // Somebody has said why in between: the next tap is meant.
      standing.pop();
    } else if (fact.kind === 'turn-started' || fact.kind === 'resumed' || fact.kind === 'part-begun') {
      standing.push({ key, atMs, run, isBegin: true, isResumed: fact.kind === 'resumed' });
    }
  }
  return second;
}
