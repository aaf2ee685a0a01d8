import { type AllowanceBasis, allowanceFactor } from '../../src/statistics/allowance-factor';
import { clockCheck } from '../../src/statistics/clock-check';
import { elementTimes } from '../../src/statistics/element-times';
import { meanNormalTime } from '../../src/statistics/mean-normal-time';
import { normalTime } from '../../src/statistics/normal-time';
import { observedMean } from '../../src/statistics/observed-mean';
import { standardTime } from '../../src/statistics/standard-time';
import type { Recompute } from './published-study-answers';

interface Element {
  readonly readings: readonly number[];
  readonly rating: number;
  readonly frequency?: number;
}

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
const rated = ({ readings, rating }: Element) => readings.map((observed) => ({ observed, rating }));
const handOnly = { internal: 0, occasional: 0, machine: 0, machineAllowance: 0 };

function wholeStudy(i: { elements: Element[]; allowance: number; basis: AllowanceBasis }) {
  const normal = i.elements.map((one) => meanNormalTime(rated(one)) * (one.frequency ?? 1));
  return {
    means: i.elements.map(({ readings }) => observedMean(readings)),
    normal,
    standard: normal.map((time) => time * allowanceFactor(i.allowance, i.basis)),
    ...standardTime({ ...handOnly, external: sum(normal), allowance: i.allowance, basis: i.basis }),
  };
}

interface Irregular {
  readonly regular: number;
  readonly irregular: number;
  readonly every: number;
  readonly allowance: number;
  readonly shiftMinutes: number;
}

interface SnapBack {
  readonly external: readonly (readonly [observed: number, rating: number])[];
  readonly internal: readonly [observed: number, rating: number];
  readonly machine: number;
  readonly irregular: readonly [observed: number, rating: number];
  readonly every: number;
  readonly allowance: number;
  readonly machineAllowance: number;
}

interface Controlled {
  readonly operator: number;
  readonly total: number;
  readonly allowance: number;
  readonly machineAllowance: number;
  readonly units: number;
  readonly shiftMinutes: number;
  readonly lostMinutes: number;
}

interface Continuous {
  readonly watch: { readonly A: number[]; readonly B: number[]; readonly C: number[]; D_in_cycle_3: number };
  readonly foreign: readonly [start: number, end: number];
  readonly ratings: Readonly<Record<'A' | 'B' | 'C' | 'D', number>>;
  readonly every: number;
  readonly allowance: number;
  readonly before: number;
  readonly after: number;
  readonly elapsed: number;
}

function continuousStudy(i: Continuous) {
  const { A, B, C, D_in_cycle_3: endOfD } = i.watch;
  const inOrder = [...A, ...B, ...C, endOfD, ...i.foreign].sort((a, b) => a - b);
  const times = elementTimes(inOrder);
  const endingAt = (end: number) => times[inOrder.indexOf(end)]!;
  const [start, end] = i.foreign;
  // The part of B before the foreign element belongs to B.
  const snapback = {
    A: A.map(endingAt),
    B: B.map((at, cycle) => endingAt(at) + (cycle === 3 ? endingAt(start) : 0)),
    C: C.map(endingAt),
    D: [endingAt(endOfD)],
  };
  const frequencies = { A: 1, B: 1, C: 1, D: 1 / i.every };
  const names = ['A', 'B', 'C', 'D'] as const;
  const each = (answer: (name: (typeof names)[number]) => number) =>
    Object.fromEntries(names.map((name) => [name, answer(name)]));
  const normal = each(
    (name) =>
      meanNormalTime(rated({ readings: snapback[name], rating: i.ratings[name] })) * frequencies[name],
  );
  const external = sum(Object.values(normal));
  const standard = (basis: AllowanceBasis) =>
    standardTime({ ...handOnly, external, allowance: i.allowance, basis }).standardTime;
  const effective = sum(names.flatMap((name) => snapback[name]));
  const clock = clockCheck({
    elapsed: i.elapsed,
    beforeStudy: i.before,
    afterStudy: i.after,
    effective,
    ineffective: endingAt(end),
  });
  return {
    snapback,
    means: each((name) => observedMean(snapback[name])),
    normal,
    normalTime: external,
    standardTime: standard('normal_time'),
    standardTimeShift: standard('shift'),
    effective,
    ineffective: endingAt(end),
    check: clock.checkTime,
    recorded: clock.recorded,
    unaccounted: clock.unaccounted,
    errorPercent: 100 * clock.errorShare,
  };
}

export const recomputeStudies: Recompute = {
  study: wholeStudy,
  'study.stevenson-5': ({ rows }: { rows: (number | null)[][] }) => {
    const seen = rows.map((row) => row.filter((reading) => reading !== null));
    return { means: seen.map(observedMean), frequencies: seen.map((row, r) => row.length / rows[r]!.length) };
  },
  'study.groover-irregular': (i: Irregular) => {
    const occasional = i.irregular / i.every;
    const times = standardTime({
      ...handOnly,
      external: i.regular,
      occasional,
      allowance: i.allowance,
      basis: 'normal_time',
    });
    const workedMinutes = i.shiftMinutes / allowanceFactor(i.allowance, 'normal_time');
    return {
      ...times,
      workedHours: workedMinutes / 60,
      units: i.shiftMinutes / times.standardTime,
      unitsAt125: (workedMinutes * 1.25) / times.normalTime,
    };
  },
  'study.groover-snapback-machine': (i: SnapBack) =>
    standardTime({
      external: sum(i.external.map(([observed, rating]) => normalTime(observed, rating))),
      internal: normalTime(...i.internal),
      occasional: normalTime(...i.irregular) / i.every,
      machine: i.machine,
      allowance: i.allowance,
      machineAllowance: i.machineAllowance,
      basis: 'normal_time',
    }),
  'study.groover-2.7': (i: Controlled) => {
    const machine = i.total - i.operator;
    const times = standardTime({
      ...handOnly,
      external: i.operator,
      machine,
      allowance: i.allowance,
      machineAllowance: i.machineAllowance,
      basis: 'normal_time',
    });
    const standardHours = (i.units * times.standardTime) / 60;
    const atWork = i.shiftMinutes - i.lostMinutes - i.units * machine;
    return {
      ...times,
      standardHours,
      efficiencyPercent: (100 * standardHours * 60) / i.shiftMinutes,
      pacePercent: (100 * i.units * i.operator) / atWork,
    };
  },
  'study.atkinson': ({ watch }: { watch: number[][] }) => {
    const byCycle = watch.map((readings) => elementTimes(readings));
    const means = byCycle[0]!.map((_, element) => observedMean(byCycle.map((cycle) => cycle[element]!)));
    return { means, total: sum(means) };
  },
  'study.clock-check': ({ errors }: { errors: number[] }) => ({
    usable: errors.map(
      (error) =>
        clockCheck({
          elapsed: 1,
          beforeStudy: 0,
          afterStudy: 0,
          // At 0.02 this leaves 0.020000000000000018 in doubles, and the study is usable all the same.
          effective: 1 - error,
          ineffective: 0,
        }).usable,
    ),
  }),
  'study.constructed': continuousStudy,
};
