import { study as words } from '../../i18n/en/study';
import { decimalMinutes, decimalSeconds } from '../../i18n/format-duration';
import { formatNumber } from '../../i18n/format-number';

export type TimeUnit = 'min' | 's';

/** How the sheet writes times: in the trade's decimal minutes, or in seconds. */
export interface TimeWords {
  readonly unit: string;
  /** A single reading: as fine as a hand can tap. */
  readonly reading: (ms: number) => string;
  /** A mean or a sum: one digit more. */
  readonly figure: (ms: number) => string;
  /** For a spread, which is small beside the mean: two digits more. */
  readonly fine: (ms: number) => string;
  /** With its unit, for a sentence. */
  readonly said: (ms: number) => string;
  /** Milliseconds of one step of an axis, so that its marks are round, and how a mark is written. */
  readonly axisMs: number;
  readonly axisText: (steps: number) => string;
}

export const timeWords: Record<TimeUnit, TimeWords> = {
  min: {
    unit: words.minutes,
    reading: (ms) => decimalMinutes(ms, 2),
    figure: (ms) => decimalMinutes(ms, 3),
    fine: (ms) => `${decimalMinutes(ms, 4)} ${words.minutes}`,
    said: (ms) => `${decimalMinutes(ms, 3)} ${words.minutes}`,
    axisMs: 60_000,
    axisText: (steps) => formatNumber(steps, 2),
  },
  s: {
    unit: words.seconds,
    reading: (ms) => decimalSeconds(ms, 1),
    figure: (ms) => decimalSeconds(ms, 2),
    fine: (ms) => `${decimalSeconds(ms, 3)} ${words.seconds}`,
    said: (ms) => `${decimalSeconds(ms, 2)} ${words.seconds}`,
    axisMs: 1_000,
    axisText: (steps) => formatNumber(steps, 0),
  },
};
