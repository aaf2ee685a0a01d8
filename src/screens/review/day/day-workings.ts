import { dayFigures } from '../../../domain/day/day-figures';
import type { DaySummary } from '../../../domain/day/summarise-day';
import { decimalMinutes } from '../../../i18n/decimal-time';
import { reviewDayMore } from '../../../i18n/en/review-day-more';
import { formatNumber } from '../../../i18n/format-number';
import { roundedClockFace } from '../../../i18n/rounded-clock-face';
import type { Working } from '../working';

const words = reviewDayMore.fair;

/** Why the day demands more a part than its mean target: set-ups earn as well. */
export function demandedWorking(day: DaySummary): Working {
  const targetsMs = day.parts.reduce((sum, part) => sum + part.earnedMs, 0);
  return {
    title: words.demandedTitle,
    says: words.demandedSays,
    formula: words.demandedFormula,
    put: words.demandedPut({
      targets: decimalMinutes(targetsMs),
      setUps: decimalMinutes(day.earnedMs - targetsMs),
      count: day.setUps,
      good: day.good,
      time: roundedClockFace(dayFigures(day).mixMs ?? 0),
    }),
  };
}

export function efficiencyWorking(day: DaySummary): Working {
  return {
    title: words.efficiencyTitle,
    says: words.efficiencySays,
    formula: words.efficiencyFormula,
    put: words.efficiencyPut(
      decimalMinutes(day.earnedMs),
      decimalMinutes(day.attendedMs),
      formatNumber(100 * (dayFigures(day).efficiency ?? 0), 1),
    ),
  };
}
