/** When the shop works, by its own wall clock, weekday by weekday, and the days that are otherwise. */
export interface ShiftCalendar {
  readonly shifts: readonly WeeklyShift[];
  readonly exceptions: readonly DayException[];
}

/** Minutes since midnight. An end that is not after its beginning lies on the next day. */
export interface DayStretch {
  readonly fromMin: number;
  readonly toMin: number;
}

/** A break, as the shop counts it. */
export interface CountedBreak {
  /** A rest that counts as attended, or a meal that does not; left out: by its length, as `isMeal` has it. */
  readonly isAttended?: boolean;
}

export interface DayBreak extends DayStretch, CountedBreak {}

/** A shift with its breaks. A break that is earlier in the day than the shift's start is past midnight. */
export interface ShiftTimes extends DayStretch {
  readonly breaks: readonly DayBreak[];
}

export interface WeeklyShift extends ShiftTimes {
  readonly name: string;
  /** ISO 8601: 1 Monday to 7 Sunday. */
  readonly weekdays: readonly number[];
}

export interface DayException {
  /** As 2026-12-24. */
  readonly day: string;
  /** None: the shop is closed. */
  readonly shifts: readonly ShiftTimes[];
}

/** A stretch on the wall clock, milliseconds since 1970-01-01T00:00:00Z. */
export interface WallStretch {
  readonly fromWallMs: number;
  readonly toWallMs: number;
}

/** A break on the wall clock. */
export interface WallBreak extends WallStretch, CountedBreak {}

/** What the calendar has on one day: its exception, or else the shifts of its weekday, by their beginning. */
export function shiftsOn({ shifts, exceptions }: ShiftCalendar, day: string): readonly ShiftTimes[] {
  const exception = exceptions.find((each) => each.day === day);
  const weekday = new Date(`${day}T12:00:00Z`).getUTCDay() || 7;
  const own = exception ? exception.shifts : shifts.filter(({ weekdays }) => weekdays.includes(weekday));
  return [...own].sort((a, b) => a.fromMin - b.fromMin);
}
