import { type ChartRule, chartSignals } from '../../statistics/chart-signals';
import { type IndividualsChart, individualsChart } from '../../statistics/individuals-chart';
import { median } from '../../statistics/median';

export interface DayValue {
  readonly day: string;
  readonly value: number;
}

export interface RunPoint extends DayValue {
  /** What the chart says about it: beyond the limits, or the eighth in a row on one side. */
  readonly signals: readonly { readonly rule: ChartRule; readonly side: 'high' | 'low' }[];
}

/** Days between two stated changes, with limits of their own. */
export interface RunStretch {
  readonly points: readonly RunPoint[];
  /** The middle one of its values. */
  readonly middle: number;
  /** Moving ranges: how far each value but the first lies from the one before it. */
  readonly steps: readonly DayValue[];
  /** The days that the limits come from: the first of the stretch, twenty at most. */
  readonly baseline: number;
  /** Null below ten days: limits of fewer would cry wolf, or sleep. */
  readonly limits: Pick<
    IndividualsChart,
    'centre' | 'lower' | 'upper' | 'meanMovingRange' | 'movingRangeUpper'
  > | null;
  readonly standing: IndividualsChart['standing'];
}

/** From here on the limits stand, and later days are held against them. */
const FIRM_DAYS = 20;

/**
 * Daily figures as a run with limits for individual values (XmR): provisional from ten days, firm from twenty, and
 * then frozen until somebody states that the work was changed. A change begins a new stretch.
 *
 * @param changes the first days of new stretches, as 2026-03-09
 */
export function daysRun(values: readonly DayValue[], changes: readonly string[]): RunStretch[] {
  const inOrder = [...values].sort((a, b) => (a.day < b.day ? -1 : 1));
  const stretches: DayValue[][] = [];
  let before = '';
  for (const value of inOrder) {
    const isNew = changes.some((change) => change > before && change <= value.day);
    if (isNew || stretches.length === 0) stretches.push([]);
    stretches.at(-1)!.push(value);
    before = value.day;
  }
  return stretches.map(withLimits);
}

function withLimits(days: readonly DayValue[]): RunStretch {
  const baseline = Math.min(days.length, FIRM_DAYS);
  const values = days.map(({ value }) => value);
  const middle = median(values);
  const steps = days.slice(1).map(({ day, value }, place) => ({
    day,
    value: Math.abs(value - days[place]!.value),
  }));
  const bare = {
    points: days.map((day) => ({ ...day, signals: [] })),
    middle,
    steps,
    baseline,
    limits: null,
  };
  if (baseline < 2) return { ...bare, standing: 'too-few' };
  const { standing, centre, lower, upper, meanMovingRange, movingRangeUpper } = individualsChart(values, {
    baseline,
  });
  if (standing === 'too-few') return { ...bare, standing };
  const signals = chartSignals(values, { lower, centre, upper });
  return {
    points: days.map((day, place) => ({
      ...day,
      signals: signals.filter(({ index }) => index === place).map(({ rule, side }) => ({ rule, side })),
    })),
    middle,
    steps,
    baseline,
    limits: { centre, lower, upper, meanMovingRange, movingRangeUpper },
    standing,
  };
}
