import { median } from '../../statistics/median';
import type { PartTapped } from './part-tapped';
import type { Cycle } from './turn';
import type { TurnRemarks } from './turn-remarks';

/** Of the recent median: so long that two parts may lie behind one tap, and not so long that it is a stoppage. */
const TWO_PARTS_FROM = 1.7;
const TWO_PARTS_TO = 2.6;
/** Fewer parts than this say nothing about what is usual. */
const RECENT = 5;

/**
 * Cycles from the parts tapped and their net times. Which of them count in means is asked, never decided: what
 * looks like two parts, and what holds an open gap or a planned break, stays out until a person says.
 *
 * @param spansBreak keys of the parts that a planned break lies in, of which nobody said whether it was taken
 */
export function judgeCycles(
  parts: readonly PartTapped[],
  netTimesMs: readonly number[],
  remarks: Pick<TurnRemarks, 'cycles' | 'recoded' | 'setAside' | 'outcomes'>,
  spansBreak: ReadonlySet<string>,
): Cycle[] {
  const recent = new Map<string, number[]>();
  return parts.flatMap((tapped, place) => {
    const { isUnbroken, hasOpenGap, touchMs, ...own } = tapped;
    const recoded = remarks.recoded.get(own.key);
    const { part, partCode, targetMs } = recoded ?? own;
    const netMs = touchMs ?? netTimesMs[place]!;
    const said = remarks.cycles.get(own.key);
    const usual = recent.get(part) ?? [];
    const isLong = said === undefined && touchMs === null && isUnbroken && isAboutTwice(netMs, usual);
    const doubt = hasOpenGap
      ? 'gap'
      : spansBreak.has(own.key)
        ? 'planned-break'
        : isLong
          ? 'two-parts'
          : null;
    const setAside = remarks.setAside.get(own.key) ?? '';
    const isCounted = doubt === null && said !== 'interrupted' && setAside === '';
    const cycle: Cycle = { ...own, part, partCode, targetMs, netMs, isCounted, doubt, setAside };
    const cycles = said === 'two-parts' ? halves(cycle, remarks) : [cycle];
    if (isCounted) recent.set(part, [...usual, ...cycles.map((each) => each.netMs)].slice(-RECENT));
    return cycles;
  });
}

function isAboutTwice(netMs: number, usual: readonly number[]): boolean {
  if (usual.length < RECENT) return false;
  const usualMs = median(usual);
  return netMs >= TWO_PARTS_FROM * usualMs && netMs <= TWO_PARTS_TO * usualMs;
}

/** Two parts for one tap, with half the time each. The second one keeps the name of the tap. */
function halves(cycle: Cycle, { outcomes }: Pick<TurnRemarks, 'outcomes'>): Cycle[] {
  const key = `${cycle.key}/1`;
  const middleMs = cycle.fromMs + Math.floor((cycle.toMs - cycle.fromMs) / 2);
  const firstMs = Math.floor(cycle.netMs / 2);
  const judged = outcomes.get(key);
  return [
    {
      ...cycle,
      key,
      toMs: middleMs,
      netMs: firstMs,
      outcome: judged?.outcome ?? 'good',
      defect: judged?.defect ?? '',
    },
    { ...cycle, fromMs: middleMs, netMs: cycle.netMs - firstMs },
  ];
}
