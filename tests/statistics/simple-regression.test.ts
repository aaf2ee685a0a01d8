import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lackOfFit } from '../../src/statistics/lack-of-fit';
import { regressionPrediction } from '../../src/statistics/regression-prediction';
import { simpleRegression } from '../../src/statistics/simple-regression';
import { badFractions, badReadings, saysRule } from './bad-readings';

/** An invented study of cleaning edges: eight readings of each of four sizes, with ratings. */
function edgeCleaning(): { perimeters: number[]; minutes: number[] } {
  const text = readFileSync('fixtures/studies/edge-cleaning-by-size-study.csv', 'utf8');
  const [header, ...lines] = text.trim().split(/\r?\n/);
  const names = header!.split(',');
  const rows = lines.map((line) => line.replace(/"[^"]*"/, 'study').split(','));
  const column = (name: string) => rows.map((row) => Number(row[names.indexOf(name)]));
  const ratings = column('rating_pct');
  const minutes = column('observed_s').map((seconds, i) => ((seconds / 60) * ratings[i]!) / 100);
  return { perimeters: column('perimeter_m'), minutes };
}

describe('simpleRegression', () => {
  it('gives the standard data of the invented edge-cleaning study', () => {
    // Each figure worked out apart, with another program, when the study was invented.
    const { perimeters, minutes } = edgeCleaning();
    const line = simpleRegression(perimeters, minutes);
    expect(minutes).toHaveLength(32);
    expect(line.intercept).toBeCloseTo(0.0587, 4);
    expect(line.interceptHalfWidth).toBeCloseTo(0.0395, 4);
    expect(line.slope).toBeCloseTo(0.1114, 4);
    expect(line.slopeHalfWidth).toBeCloseTo(0.0092, 4);
    expect(line.rSquared).toBeCloseTo(0.953, 3);
    expect(line.residualDeviation).toBeCloseTo(0.0324, 4);

    // F 0.7745 and p 0.4705 in full; the printed 0.78 was rounded the other way from 0.775.
    const bend = lackOfFit(perimeters, minutes);
    expect(Math.abs(bend.f - 0.78)).toBeLessThan(0.006);
    expect(bend.probability).toBeCloseTo(0.47, 2);

    const size = regressionPrediction(line.fit, [4.2]);
    expect(size.value).toBeCloseTo(0.526, 3);
    expect(size.meanHalfWidth).toBeCloseTo(0.012, 3);
    expect(size.partsHalfWidth).toBeCloseTo(0.067, 3);
  });

  const line = fc.array(fc.tuple(fc.integer({ min: 0, max: 60 }), fc.integer({ min: 1, max: 500 })), {
    minLength: 3,
    maxLength: 30,
  });
  const isFittable = (sample: readonly (readonly [number, number])[]) =>
    new Set(sample.map(([x]) => x)).size > 1 && new Set(sample.map(([, y]) => y)).size > 1;

  it('turns the slope with the units of both sides and keeps R²', () => {
    fc.assert(
      fc.property(line.filter(isFittable), (sample) => {
        const x = sample.map(([value]) => value);
        const y = sample.map(([, value]) => value);
        const metres = simpleRegression(x, y);
        const inches = simpleRegression(
          x.map((value) => value / 0.0254),
          y.map((value) => value * 60),
        );
        expect(inches.slope / 60 / 0.0254).toBeCloseTo(metres.slope, 8);
        expect(inches.intercept / 60).toBeCloseTo(metres.intercept, 8);
        expect(inches.rSquared).toBeCloseTo(metres.rSquared, 8);
      }),
    );
  });

  it('goes through the point of means', () => {
    fc.assert(
      fc.property(line.filter(isFittable), (sample) => {
        const x = sample.map(([value]) => value);
        const y = sample.map(([, value]) => value);
        const { intercept, slope } = simpleRegression(x, y);
        const mean = (values: number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
        expect(intercept + slope * mean(x)).toBeCloseTo(mean(y), 8);
      }),
    );
  });

  it('narrows the slope when every reading is taken again', () => {
    const x = [1, 2, 3, 4];
    const y = [1.1, 1.9, 3.2, 3.9];
    const once = simpleRegression(x, y);
    const twice = simpleRegression([...x, ...x], [...y, ...y]);
    expect(twice.slope).toBeCloseTo(once.slope, 12);
    expect(twice.slopeHalfWidth).toBeLessThan(once.slopeHalfWidth);
  });

  it.each([
    ['two points', [1, 2], [3, 4]],
    ['one size only', [2, 2, 2], [3, 4, 5]],
    ['times that are all equal', [1, 2, 3], [4, 4, 4]],
    ['lists of two lengths', [1, 2, 3], [4, 5]],
  ])('refuses %s', (_, x, y) => {
    expect(() => simpleRegression(x, y)).toThrow(saysRule('simpleRegression'));
  });

  it.each(badReadings)('refuses a driver with %s', (_, bad) => {
    expect(() =>
      simpleRegression(
        bad,
        bad.map((__, i) => i),
      ),
    ).toThrow(saysRule('simpleRegression'));
  });

  it.each(badFractions)('refuses the confidence %s', (confidence) => {
    expect(() => simpleRegression([1, 2, 3], [1, 3, 2], { confidence })).toThrow(
      saysRule('simpleRegression'),
    );
  });
});
