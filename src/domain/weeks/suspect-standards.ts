import type { DaySummary } from '../day/summarise-day';
import { groupBy } from '../group-by';

/** A target that looks wrong beside the targets of the other parts. */
export interface SuspectStandard {
  readonly part: string;
  readonly partCode: string;
  /** Net cycle against target, over that of the other parts on the same days: 1.12 is 12 % more. */
  readonly against: number;
  readonly days: number;
}

/** Fewer days may be the days, and not the standard. */
const DAYS = 5;
/** As far as a standard is trusted anyway. */
const OFF = 0.05;
const AGREED = 0.9;

/**
 * Standards that look wrong: a part takes more of its target than the other parts take of theirs, or less, and it
 * does so in whoever's hands. Then the target is to be looked at, and not the people.
 *
 * Formula: against = (Σ net/Σ target of the part) ÷ (Σ net/Σ target of the others), both over the days on which
 *          the part was made, milliseconds
 * Told from five days on, when it is off by more than 5 % and at least nine of ten person-days lie on that side.
 */
export function suspectStandards(summaries: readonly DaySummary[]): SuspectStandard[] {
  return [...comparedByPart(summaries)].flatMap(([part, compared]): SuspectStandard[] => {
    if (compared.length < DAYS) return [];
    const sum = (of: (day: (typeof compared)[number]) => number) =>
      compared.reduce((total, day) => total + of(day), 0);
    const own = sum(({ part: each }) => each.takenMs) / sum(({ part: each }) => each.allowedMs);
    const others = sum(({ otherTakenMs }) => otherTakenMs) / sum(({ otherAllowedMs }) => otherAllowedMs);
    const against = own / others;
    const over = sum(({ part: each }) => each.peopleOver);
    const inside = sum(({ part: each }) => each.peopleInside);
    const onThatSide = against > 1 ? over : inside;
    const isAgreed = onThatSide > 0 && onThatSide >= AGREED * (over + inside);
    if (Math.abs(against - 1) <= OFF || !isAgreed) return [];
    return [{ part, partCode: compared.at(-1)!.part.partCode, against, days: compared.length }];
  });
}

/** Whether any target can be judged yet: a part with a target was made beside others on five days. */
export function areStandardsTold(summaries: readonly DaySummary[]): boolean {
  return [...comparedByPart(summaries).values()].some((days) => days.length >= DAYS);
}

/** The days of each part on which another was made too, with what the others took. */
function comparedByPart(summaries: readonly DaySummary[]) {
  const made = summaries.flatMap(({ parts }) =>
    parts
      .filter(({ allowedMs }) => allowedMs > 0)
      .map((part) => ({
        part,
        otherAllowedMs: parts.reduce((sum, other) => sum + other.allowedMs, 0) - part.allowedMs,
        otherTakenMs: parts.reduce((sum, other) => sum + other.takenMs, 0) - part.takenMs,
      })),
  );
  const compared = made.filter(({ otherAllowedMs, otherTakenMs }) => otherAllowedMs > 0 && otherTakenMs > 0);
  return groupBy(compared, ({ part }) => part.part);
}
