import type { Stamp } from '../records/stamp';
import { shiftAt, shiftsAround } from './shift-at';
import type { ShiftCalendar, WallBreak } from './shift-calendar';

const DAY_MS = 86_400_000;

/** What the calendar plans for a turn that begins at a moment. */
export interface ShiftPlan {
  /** Breaks that have not ended, of its shift and of the shifts after it up to a day ahead, in order of time. */
  readonly breaks: readonly WallBreak[];
  /** End of its shift, wall clock in milliseconds; null when it begins in none. */
  readonly endsWallMs: number | null;
}

/**
 * The breaks ahead of a turn. Another shift that runs at the same time has breaks of its own, which are nobody's
 * here; one that begins when the turn's shift ends counts, because a person may stay on.
 */
export function shiftPlan(calendar: ShiftCalendar, moment: Stamp): ShiftPlan {
  const own = shiftAt(calendar, moment);
  const fromMs = own?.toWallMs ?? moment.wallMs;
  const later = shiftsAround(calendar, moment).filter(({ fromWallMs }) => fromWallMs >= fromMs);
  const breaks = [...(own?.breaks ?? []), ...later.flatMap((shift) => shift.breaks)]
    .filter(({ fromWallMs, toWallMs }) => toWallMs > moment.wallMs && fromWallMs < moment.wallMs + DAY_MS)
    .sort((a, b) => a.fromWallMs - b.fromWallMs);
  return {
    breaks: breaks.filter(({ fromWallMs }, place) => {
      const before = breaks[place - 1];
      return !before || fromWallMs >= before.toWallMs;
    }),
    endsWallMs: own?.toWallMs ?? null,
  };
}
