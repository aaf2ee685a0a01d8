import { type ExtrapolationCheck, extrapolationCheck } from '../../statistics/extrapolation-check';
import { type LackOfFit, lackOfFit } from '../../statistics/lack-of-fit';
import { type RegressionPrediction, regressionPrediction } from '../../statistics/regression-prediction';
import { type SimpleRegression, simpleRegression } from '../../statistics/simple-regression';
import { groupBy } from '../group-by';
import type { StudyRow } from './study-row';

/** A rated reading of an element on a part of one size. */
export interface SizedReading {
  readonly size: number;
  readonly normalMs: number;
}

/** Readings of one element, by what they may grow with. */
export interface SizedElement {
  readonly element: string;
  readonly driver: string;
  readonly readings: readonly SizedReading[];
}

/** Columns that a table carries for other reasons, also where they hold a number. */
const notSizes: readonly string[] = [
  'watch_s',
  'part',
  'operator',
  'observer',
  'method_revision',
  'conditions',
  'started_at',
  'time_zone',
  'note',
  'clock_flag',
  'cause',
];

/**
 * Elements of which parts of several sizes were read, with what they may grow with: any carried column with a
 * number above 0 on every reading used. Work of the machine counts too: its run may grow with the part.
 */
export function sizedElements(rows: readonly StudyRow[]): SizedElement[] {
  const used = rows.filter(
    ({ elementClass, excluded, observedMs }) =>
      elementClass === 'repetitive' && excluded === null && observedMs !== null && observedMs > 0,
  );
  return [...groupBy(used, ({ element }) => element)].flatMap(([element, own]) => {
    const drivers = new Set(own.flatMap(({ carried }) => Object.keys(carried)));
    return [...drivers]
      .filter((driver) => !notSizes.includes(driver))
      .flatMap((driver): SizedElement[] => {
        const readings = own.flatMap(({ carried, observedMs, ratingPct }) => {
          const size = Number(carried[driver] || Number.NaN);
          return size > 0 && Number.isFinite(size)
            ? [{ size, normalMs: (observedMs! * ratingPct) / 100 }]
            : [];
        });
        const sizes = new Set(readings.map(({ size }) => size)).size;
        return sizes > 1 && readings.length > 2 ? [{ element, driver, readings }] : [];
      });
  });
}

export type StandardDataWarning =
  | 'few-sizes'
  | 'few-readings'
  | 'bends'
  | 'negative-constant'
  | 'one-size-decides'
  | 'constant';

/** Fewest sizes, and readings of each, for a line worth quoting from. */
const FEWEST_SIZES = 4;
const FEWEST_READINGS = 4;
/** Under this change over the range studied, and with no slope shown, an element is the same for every size. */
const CONSTANT_CHANGE = 0.05;
/** One size with more than this share of Σ(x − x̄)² holds the line alone. */
const ONE_SIZE_SHARE = 0.7;

/** An element's time as a constant and so much for each unit of size. */
export interface StandardData {
  readonly regression: SimpleRegression;
  /** Null where no size was read twice, or fewer than three were. */
  readonly fit: LackOfFit | null;
  readonly sizes: readonly { readonly size: number; readonly n: number }[];
  readonly readings: readonly SizedReading[];
  readonly warnings: readonly StandardDataWarning[];
}

/**
 * Fits standard data: normal time, milliseconds, against size, by least squares; null where every time is the same
 * or the sizes cannot carry a line.
 */
export function fitStandardData(readings: readonly SizedReading[]): StandardData | null {
  const x = readings.map(({ size }) => size);
  const y = readings.map(({ normalMs }) => normalMs);
  const groups = [...groupBy(readings, ({ size }) => size)].sort(([a], [b]) => a - b);
  if (groups.length < 2 || readings.length < 3 || y.every((ms) => ms === y[0])) return null;
  const regression = simpleRegression(x, y);
  const { intercept, slope, slopeHalfWidth } = regression;
  const sizes = groups.map(([size, own]) => ({ size, n: own.length }));
  const low = sizes[0]!.size;
  const high = sizes.at(-1)!.size;
  const fit = lackOfFitOf(x, y, groups.length);
  const warnings: StandardDataWarning[] = [];
  if (sizes.length < FEWEST_SIZES) warnings.push('few-sizes');
  if (sizes.some(({ n }) => n < FEWEST_READINGS)) warnings.push('few-readings');
  if (fit && fit.probability < 0.05) warnings.push('bends');
  if (intercept < 0) warnings.push('negative-constant');
  if (widestShare(x, sizes) > ONE_SIZE_SHARE && sizes.length > 2) warnings.push('one-size-decides');
  const change = Math.abs(slope * (high - low)) / Math.abs(intercept + slope * low);
  if (Math.abs(slope) <= slopeHalfWidth && change < CONSTANT_CHANGE) warnings.push('constant');
  return { regression, fit, sizes, readings, warnings };
}

/** The time for a part of any size, with its intervals, and whether the size lies where something was read. */
export function timeForSize(
  { regression, sizes }: StandardData,
  size: number,
  parts = 1,
): RegressionPrediction & { readonly range: ExtrapolationCheck } {
  return {
    ...regressionPrediction(regression.fit, [size], { parts }),
    range: extrapolationCheck(
      sizes.map((one) => one.size),
      size,
    ),
  };
}

function lackOfFitOf(x: readonly number[], y: readonly number[], sizes: number): LackOfFit | null {
  if (sizes < 3 || y.length <= sizes) return null;
  try {
    return lackOfFit(x, y);
  } catch {
    // Readings of one size that do not differ leave nothing to compare with.
    return null;
  }
}

function widestShare(x: readonly number[], sizes: readonly { size: number; n: number }[]): number {
  const mean = x.reduce((sum, value) => sum + value, 0) / x.length;
  const squares = sizes.map(({ size, n }) => n * (size - mean) ** 2);
  return Math.max(...squares) / squares.reduce((sum, square) => sum + square, 0);
}
