import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addReading } from '../../src/statistics/add-reading';
import { type AllowanceBasis, allowanceFactor } from '../../src/statistics/allowance-factor';
import { chiSquareProbability } from '../../src/statistics/chi-square-probability';
import { chiSquareQuantile } from '../../src/statistics/chi-square-quantile';
import { coefficientOfVariation } from '../../src/statistics/coefficient-of-variation';
import { convertAllowance } from '../../src/statistics/convert-allowance';
import { convertRating } from '../../src/statistics/convert-rating';
import { convertTime, type TimeUnit } from '../../src/statistics/convert-time';
import { elementTimes } from '../../src/statistics/element-times';
import { fisherProbability } from '../../src/statistics/fisher-probability';
import { fisherQuantile } from '../../src/statistics/fisher-quantile';
import { lagOneAutocorrelation } from '../../src/statistics/lag-one-autocorrelation';
import { meanInterval } from '../../src/statistics/mean-interval';
import { meanNormalTime } from '../../src/statistics/mean-normal-time';
import { median } from '../../src/statistics/median';
import { normalProbability } from '../../src/statistics/normal-probability';
import { normalQuantile } from '../../src/statistics/normal-quantile';
import { observedMean } from '../../src/statistics/observed-mean';
import { operatorDayInterval } from '../../src/statistics/operator-day-interval';
import { quantile } from '../../src/statistics/quantile';
import { readingsSummary } from '../../src/statistics/readings-summary';
import { removeReading } from '../../src/statistics/remove-reading';
import { requiredReadingsIterated } from '../../src/statistics/required-readings-iterated';
import { requiredReadingsMeanRange } from '../../src/statistics/required-readings-mean-range';
import { requiredReadingsNormal } from '../../src/statistics/required-readings-normal';
import { requiredReadingsShortForm } from '../../src/statistics/required-readings-short-form';
import { runningMeanInterval } from '../../src/statistics/running-mean-interval';
import { type RunningStatistics, runningStatistics } from '../../src/statistics/running-statistics';
import { sampleStandardDeviation } from '../../src/statistics/sample-standard-deviation';
import type { RatingScale } from '../../src/statistics/standard-rating';
import { standardTime } from '../../src/statistics/standard-time';
import { studentProbability } from '../../src/statistics/student-probability';
import { studentQuantile } from '../../src/statistics/student-quantile';
import { totalUncertainty } from '../../src/statistics/total-uncertainty';
import { unoccupiedRest } from '../../src/statistics/unoccupied-rest';
import { varianceComponents } from '../../src/statistics/variance-components';
import { varianceOfMean } from '../../src/statistics/variance-of-mean';
import { wholeReadings } from '../../src/statistics/whole-readings';

// Nothing here rests on a printed number: each is what must hold for any readings at all.

const time = fc.double({ min: 0.01, max: 100, noNaN: true });
const times = fc.array(time, { minLength: 2, maxLength: 40 });
const spreadTimes = times.filter((x) => Math.max(...x) > 1.01 * Math.min(...x));
const factor = fc.double({ min: 0.001, max: 60_000, noNaN: true });
const share = fc.double({ min: 0, max: 0.9, noNaN: true });
const confidence = fc.constantFrom(0.8, 0.9, 0.95, 0.9545, 0.99);
const precision = fc.constantFrom(0.02, 0.05, 0.1);
const probability = fc.double({ min: 1e-6, max: 1 - 1e-6, noNaN: true });
const freedom = fc.double({ min: 1, max: 1e6, noNaN: true });
const scale = fc.constantFrom<RatingScale>('60-80', '75-100', '100-133', '0-100');
const basis = fc.constantFrom<AllowanceBasis>('normal_time', 'shift');
const unit = fc.constantFrom<TimeUnit>('ms', 's', 'min', 'h', 'centiminute', 'decimalHour', 'tmu');

const near = (a: number, b: number, relative = 1e-9) =>
  Math.abs(a - b) <= relative * Math.max(Math.abs(a), Math.abs(b));
const scaled = (x: readonly number[], by: number) => x.map((one) => one * by);
const shuffled = <Item>(items: readonly Item[]) =>
  fc.shuffledSubarray([...items], { minLength: items.length });

const holds = <Given>(property: fc.IPropertyWithHooks<Given>) => fc.assert(property, { seed: 7 });

describe('a change of unit', () => {
  it('moves the mean, median, quantile and deviation with it', () => {
    holds(
      fc.property(spreadTimes, factor, (x, by) => {
        const y = scaled(x, by);
        expect(near(observedMean(y), by * observedMean(x))).toBe(true);
        expect(near(median(y), by * median(x))).toBe(true);
        expect(near(quantile(y, 0.9), by * quantile(x, 0.9))).toBe(true);
        expect(near(sampleStandardDeviation(y), by * sampleStandardDeviation(x))).toBe(true);
      }),
    );
  });

  it('changes no ratio: variation, relative precision, autocorrelation, required readings', () => {
    holds(
      fc.property(spreadTimes, factor, confidence, precision, (x, by, sure, k) => {
        const y = scaled(x, by);
        expect(near(coefficientOfVariation(y), coefficientOfVariation(x))).toBe(true);
        expect(near(meanInterval(y, sure).relativeHalfWidth, meanInterval(x, sure).relativeHalfWidth)).toBe(
          true,
        );
        expect(Math.abs(lagOneAutocorrelation(y) - lagOneAutocorrelation(x))).toBeLessThan(1e-9);
        expect(near(requiredReadingsShortForm(y, k).raw, requiredReadingsShortForm(x, k).raw)).toBe(true);
        expect(near(requiredReadingsMeanRange(y, k).raw, requiredReadingsMeanRange(x, k).raw)).toBe(true);
      }),
    );
  });

  it('of a standard time changes it in proportion and leaves what governs', () => {
    holds(
      fc.property(time, time, time, share, basis, (external, internal, machine, allowance, chosen) => {
        const parts = { occasional: 0, allowance, machineAllowance: 0.05, basis: chosen };
        const minutes = standardTime({ ...parts, external, internal, machine });
        const millis = standardTime({
          ...parts,
          external: 60_000 * external,
          internal: 60_000 * internal,
          machine: 60_000 * machine,
        });
        expect(near(millis.standardTime, 60_000 * minutes.standardTime)).toBe(true);
        expect(millis.governing).toBe(minutes.governing);
      }),
    );
  });
});

describe('conversion and back', () => {
  it('is the identity for times, ratings and allowances', () => {
    holds(
      fc.property(time, unit, unit, (x, from, to) =>
        near(convertTime(convertTime(x, from, to), to, from), x, 1e-14),
      ),
    );
    holds(
      fc.property(fc.integer({ min: 1, max: 200 }), scale, scale, (rating, from, to) =>
        near(convertRating(convertRating(rating, from, to), to, from), rating, 1e-14),
      ),
    );
    holds(
      fc.property(share, basis, basis, (allowance, from, to) =>
        near(convertAllowance(convertAllowance(allowance, from, to), to, from), allowance, 1e-12),
      ),
    );
  });

  it('of an allowance leaves the standard time it makes', () => {
    holds(
      fc.property(share, (allowance) => {
        const onNormalTime = convertAllowance(allowance, 'shift', 'normal_time');
        return near(allowanceFactor(onNormalTime, 'normal_time'), allowanceFactor(allowance, 'shift'), 1e-12);
      }),
    );
  });

  it('is the identity for quantile and probability, four distributions', () => {
    // At p near 1 the probability itself is rounded; the smaller side keeps its digits.
    const same = (p: number, back: number) => (p < 0.5 ? near(p, back, 1e-8) : near(1 - p, 1 - back, 1e-8));
    holds(fc.property(probability, (p) => same(p, normalProbability(normalQuantile(p)))));
    holds(fc.property(probability, freedom, (p, v) => same(p, studentProbability(studentQuantile(p, v), v))));
    holds(
      fc.property(probability, freedom, (p, v) => same(p, chiSquareProbability(chiSquareQuantile(p, v), v))),
    );
    holds(
      fc.property(probability, freedom, freedom, (p, v, w) =>
        same(p, fisherProbability(fisherQuantile(p, v, w), v, w)),
      ),
    );
  });

  it('of running readings, added and taken out again, leaves the figures of those that stay', () => {
    holds(
      fc.property(spreadTimes, times, confidence, (stay, go, sure) => {
        const all = [...stay, ...go].reduce(addReading, runningStatistics);
        const left = go.reduce<RunningStatistics>(removeReading, all);
        const running = runningMeanInterval(left, sure);
        const batch = meanInterval(stay, sure);
        expect(running.n).toBe(batch.n);
        expect(near(running.mean, batch.mean)).toBe(true);
        expect(near(running.standardDeviation, batch.standardDeviation, 1e-7)).toBe(true);
      }),
    );
  });

  it('of a running watch gives the element times it was made of', () => {
    holds(
      fc.property(times, (elements) => {
        let watch = 0;
        const readings = elements.map((one) => {
          watch += one;
          return watch;
        });
        return elementTimes(readings).every((one, i) => near(one, elements[i]!, 1e-7));
      }),
    );
  });
});

describe('adding a constant to every reading', () => {
  it('moves the mean by it and leaves the deviation and the autocorrelation', () => {
    holds(
      fc.property(spreadTimes, time, (x, constant) => {
        const y = x.map((one) => one + constant);
        expect(near(observedMean(y), observedMean(x) + constant)).toBe(true);
        expect(near(sampleStandardDeviation(y), sampleStandardDeviation(x))).toBe(true);
        expect(Math.abs(lagOneAutocorrelation(y) - lagOneAutocorrelation(x))).toBeLessThan(1e-8);
      }),
    );
  });
});

describe('the order of the readings', () => {
  const withOrder = spreadTimes.chain((x) => fc.tuple(fc.constant(x), shuffled(x)));

  it('changes no mean, median, deviation, interval or required count', () => {
    holds(
      fc.property(withOrder, confidence, ([x, y], sure) => {
        expect(near(observedMean(y), observedMean(x), 1e-14)).toBe(true);
        expect(median(y)).toBe(median(x));
        expect(near(sampleStandardDeviation(y), sampleStandardDeviation(x), 1e-12)).toBe(true);
        expect(near(meanInterval(y, sure).halfWidth, meanInterval(x, sure).halfWidth, 1e-12)).toBe(true);
        expect(near(readingsSummary(y, sure).mean, observedMean(x), 1e-14)).toBe(true);
      }),
    );
  });

  it('does not matter between operator-days nor inside one', () => {
    const days = fc
      .array(fc.array(time, { minLength: 2, maxLength: 8 }), { minLength: 2, maxLength: 6 })
      .chain((x) => fc.tuple(fc.constant(x), shuffled(x)));
    holds(
      fc.property(days, ([x, y]) => {
        const backwards = y.map((day) => [...day].reverse());
        const [a, b] = [varianceComponents(x), varianceComponents(backwards)];
        expect(near(a.within, b.within, 1e-9)).toBe(true);
        expect(near(a.meanSquareBetween, b.meanSquareBetween, 1e-6)).toBe(true);
      }),
    );
  });
});

describe('more readings', () => {
  it('never widen the theoretical interval: t(n − 1)/√n falls with n', () => {
    holds(
      fc.property(fc.integer({ min: 2, max: 100_000 }), confidence, (n, sure) => {
        const width = (count: number) => studentQuantile((1 + sure) / 2, count - 1) / Math.sqrt(count);
        return width(n + 1) < width(n);
      }),
    );
  });

  it('never raise the variance of the mean, and another operator-day lowers it more than the same readings', () => {
    const plan = fc.record({
      within: time,
      between: time,
      groups: fc.integer({ min: 1, max: 20 }),
      perDay: fc.integer({ min: 1, max: 60 }),
    });
    holds(
      fc.property(plan, ({ within, between, groups, perDay }) => {
        const now = varianceOfMean({ within, between, groups, n: groups * perDay });
        const longer = varianceOfMean({ within, between, groups, n: (groups + 1) * perDay });
        const another = varianceOfMean({ within, between, groups: groups + 1, n: (groups + 1) * perDay });
        return longer < now && another < longer;
      }),
    );
  });
});

describe('required readings', () => {
  const asked = fc.record({
    mean: time,
    standardDeviation: fc.double({ min: 0, max: 30, noNaN: true }),
    precision,
    confidence,
  });

  it('by t are the smallest count that meets the condition: one fewer does not', () => {
    holds(
      fc.property(asked, (given) => {
        const n = requiredReadingsIterated(given);
        const needed = (count: number) =>
          ((studentQuantile((1 + given.confidence) / 2, count - 1) * given.standardDeviation) /
            (given.precision * given.mean)) **
          2;
        expect(n).toBeGreaterThanOrEqual(needed(n) * (1 - 1e-11));
        if (n > 2) expect(n - 1).toBeLessThan(needed(n - 1));
      }),
    );
  });

  it('by t are never fewer than by z, and a finer precision never asks for fewer', () => {
    holds(
      fc.property(asked, (given) => {
        const finer = { ...given, precision: given.precision / 2 };
        expect(requiredReadingsIterated(given)).toBeGreaterThanOrEqual(
          requiredReadingsNormal(given).readings,
        );
        expect(requiredReadingsIterated(finer)).toBeGreaterThanOrEqual(requiredReadingsIterated(given));
      }),
    );
  });

  it('round a count that arithmetic has moved by a hair to the same whole number on both sides', () => {
    holds(
      fc.property(
        fc.integer({ min: 1, max: 1_000_000 }),
        fc.double({ min: -4e-13, max: 4e-13, noNaN: true }),
        (n, hair) => wholeReadings(n * (1 + hair)) === n,
      ),
    );
    holds(
      fc.property(
        fc.integer({ min: 0, max: 100_000 }),
        fc.double({ min: 1e-4, max: 1, noNaN: true }),
        (n, part) => wholeReadings(n + part) === n + 1,
      ),
    );
  });
});

describe('normal and standard time', () => {
  it('is the observed time at standard pace, and the mean of products otherwise', () => {
    holds(
      fc.property(times, (x) =>
        near(meanNormalTime(x.map((observed) => ({ observed, rating: 100 }))), observedMean(x), 1e-14),
      ),
    );
    // 10 s at 50 and 20 s at 100 are 5 s and 20 s: 12.5 s. Mean time by mean rating would say 11.25 s.
    expect(
      meanNormalTime([
        { observed: 10, rating: 50 },
        { observed: 20, rating: 100 },
      ]),
    ).toBe(12.5);
  });

  it('rises with every part of it and with every allowance', () => {
    const parts = fc.record({
      external: time,
      internal: time,
      occasional: time,
      machine: time,
      allowance: share,
      machineAllowance: share,
      basis,
    });
    holds(
      fc.property(parts, fc.constantFrom('external', 'internal', 'occasional', 'machine'), (given, part) => {
        const more = { ...given, [part]: given[part] * 1.1 };
        expect(standardTime(more).standardTime).toBeGreaterThanOrEqual(standardTime(given).standardTime);
        const rested = { ...given, allowance: given.allowance + 0.05 };
        expect(standardTime(rested).standardTime).toBeGreaterThan(standardTime(given).standardTime);
      }),
    );
  });

  it('with a machine is never less than either branch, and what governs is the longer', () => {
    holds(
      fc.property(time, time, time, share, (external, internal, machine, allowance) => {
        const answer = standardTime({
          external,
          internal,
          machine,
          occasional: 0,
          allowance,
          machineAllowance: 0,
          basis: 'normal_time',
        });
        const hand = (external + internal) * (1 + allowance);
        const held = external * (1 + allowance) + machine;
        expect(near(answer.standardTime, Math.max(hand, held), 1e-12)).toBe(true);
        if (!near(hand, held)) expect(answer.governing).toBe(hand > held ? 'operator' : 'machine');
      }),
    );
  });

  it('lets a wait count as rest for no more than its length, more for a longer one', () => {
    holds(
      fc.property(fc.double({ min: 0, max: 5, noNaN: true }), (wait) => {
        expect(unoccupiedRest(wait)).toBeLessThanOrEqual(wait);
        expect(unoccupiedRest(wait + 0.1)).toBeGreaterThanOrEqual(unoccupiedRest(wait));
      }),
    );
  });
});

describe('uncertainty', () => {
  it('in all is at least its largest source and at most their sum', () => {
    holds(
      fc.property(share, share, share, (sampling, rating, frequency) => {
        const { total } = totalUncertainty({ sampling, rating, frequency });
        expect(total).toBeGreaterThanOrEqual(Math.max(sampling, rating, frequency) * (1 - 1e-15));
        expect(total).toBeLessThanOrEqual((sampling + rating + frequency) * (1 + 1e-15));
      }),
    );
  });

  it('between equally long operator-days is that of their means, as long as they differ more than chance', () => {
    const days = fc
      .tuple(fc.integer({ min: 2, max: 6 }), fc.integer({ min: 2, max: 6 }))
      .chain(([g, n]) =>
        fc.array(fc.array(time, { minLength: n, maxLength: n }), { minLength: g, maxLength: g }),
      );
    holds(
      fc.property(days, (x) => {
        const { between } = varianceComponents(x);
        fc.pre(between > 1e-6);
        const means = x.map(observedMean);
        const ofMeans = meanInterval(means, 0.95);
        expect(near(operatorDayInterval(x, 0.95).halfWidth, ofMeans.halfWidth, 1e-7)).toBe(true);
        expect(near(operatorDayInterval(x, 0.95).mean, ofMeans.mean, 1e-12)).toBe(true);
      }),
    );
  });
});
