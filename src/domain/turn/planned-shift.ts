import type { PlacedRecord } from '../records/place-on-timeline';
import type { CountedBreak } from '../shop/shift-calendar';

/** From where to where in a turn, milliseconds since it began. */
interface Stretch extends CountedBreak {
  readonly fromMs: number;
  readonly toMs: number;
}

/** What the shop's calendar had planned for a turn, on the turn's own line of time. */
export interface PlannedShift {
  readonly breaks: readonly Stretch[];
  /** Null when no shift was planned. */
  readonly endsAtMs: number | null;
}

/**
 * The plan of a turn in milliseconds since it began. It was made by the wall clock, so where that was set in the
 * course of the turn, what is still to come moves with it.
 */
export function plannedShift(placed: readonly PlacedRecord[]): PlannedShift {
  let breaks: Stretch[] = [];
  let endsAtMs: number | null = null;
  for (const { record, atMs } of placed) {
    const { fact, stamp } = record;
    if (fact.kind === 'shift-planned') {
      const onLine = (wallMs: number) => wallMs - stamp.wallMs + atMs;
      breaks = fact.breaks.map(({ fromWallMs, toWallMs, ...counted }) => ({
        ...counted,
        fromMs: onLine(fromWallMs),
        toMs: onLine(toWallMs),
      }));
      endsAtMs = fact.endsWallMs === null ? null : onLine(fact.endsWallMs);
    } else if (fact.kind === 'clock-set') {
      const moved = (ms: number) => (ms > atMs ? ms - fact.byMs : ms);
      breaks = breaks.map((each) => ({ ...each, fromMs: moved(each.fromMs), toMs: moved(each.toMs) }));
      endsAtMs = endsAtMs === null ? null : moved(endsAtMs);
    }
  }
  return { breaks, endsAtMs };
}
