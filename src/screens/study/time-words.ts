import { study as words } from '../../i18n/en/study';
import { studySheet } from '../../i18n/en/study-sheet';
import { formatNumber } from '../../i18n/format-number';

/** `tmu` is the time measurement unit: 0.00001 h, 36 ms. */
export type TimeUnit = 'clock' | 'min' | 's' | 'tmu';

/** How the sheet writes times. Switching it changes nothing that is kept. */
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

function inUnit(
  unit: string,
  write: (ms: number, digits: number) => string,
  digits: number,
  axisMs: number,
  axisDigits = 0,
): TimeWords {
  return {
    unit,
    reading: (ms) => write(ms, digits),
    figure: (ms) => write(ms, digits + 1),
    fine: (ms) => `${write(ms, digits + 2)} ${unit}`,
    said: (ms) => `${write(ms, digits + 1)} ${unit}`,
    axisMs,
    axisText: (steps) => write(steps * axisMs, axisDigits),
  };
}

const decimal = (unitMs: number) => (ms: number, digits: number) => formatNumber(ms / unitMs, digits);

/** Minutes and seconds, rounded first: 59.96 s with one digit are 1:00.0. */
function minutesAndSeconds(ms: number, digits: number): string {
  const parts = 10 ** digits;
  const all = Math.round((Math.abs(ms) * parts) / 1_000);
  const minutes = Math.floor(all / (60 * parts));
  const seconds = formatNumber(all / parts - 60 * minutes, digits).padStart(
    digits === 0 ? 2 : digits + 3,
    '0',
  );
  return `${ms < 0 && all > 0 ? '−' : ''}${minutes}:${seconds}`;
}

export const timeWords: Record<TimeUnit, TimeWords> = {
  clock: { ...inUnit(words.minutes, minutesAndSeconds, 1, 1_000), unit: studySheet.units.clock },
  min: inUnit(words.minutes, decimal(60_000), 2, 60_000, 2),
  s: inUnit(words.seconds, decimal(1_000), 1, 1_000),
  tmu: inUnit(studySheet.units.tmu, decimal(36), 0, 36),
};
