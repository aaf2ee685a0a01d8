import type { RunFigure } from '../../../domain/weeks/run-figures';
import { reviewWeeks as words } from '../../../i18n/en/review-weeks';
import { formatNumber } from '../../../i18n/format-number';
import { roundedClockFace } from '../../../i18n/rounded-clock-face';

/** Whether a figure is a time; the others are percent. */
export function isTime(figure: RunFigure): boolean {
  return typeof figure !== 'string' || figure === 'per-good';
}

export function valueText(figure: RunFigure, value: number): string {
  return isTime(figure) ? roundedClockFace(value * 60_000) : words.value.percent(formatNumber(value, 1));
}

export function axisText(figure: RunFigure): string {
  return words.axis[typeof figure === 'string' ? figure : 'part'];
}
