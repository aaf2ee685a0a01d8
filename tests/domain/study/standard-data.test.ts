import { describe, expect, it } from 'vitest';
import { fitStandardData, sizedElements, timeForSize } from '../../../src/domain/study/standard-data';
import { fixtureRows } from './demo-rows';
import { element, openStudy, studyOf, tapAfter } from './study-at-the-bench';

const minutes = (ms: number) => ms / 60_000;

describe('standard data of the invented shop, edge cleaning against the perimeter', () => {
  // 4 sizes, 8 rated readings each: 0.0587 (± 0.0395) + 0.1114 (± 0.0092) a metre, R² 0.953, s 0.0324,
  // lack of fit F 0.78, p 0.47; at 4.2 m 0.526, the mean ± 0.012, one door ± 0.067.
  const [cleaning] = sizedElements(fixtureRows('studies/edge-cleaning-by-size-study'));
  const data = fitStandardData(cleaning!.readings)!;

  it('is found in the table by itself', () => {
    expect([cleaning!.element, cleaning!.driver, cleaning!.readings.length]).toEqual([
      'clean up edges',
      'perimeter_m',
      32,
    ]);
  });

  it('is a constant and so much a metre, to the digits', () => {
    const { intercept, slope, interceptHalfWidth, slopeHalfWidth, rSquared, residualDeviation } =
      data.regression;
    expect(minutes(intercept)).toBeCloseTo(0.0587, 4);
    expect(minutes(interceptHalfWidth)).toBeCloseTo(0.0395, 4);
    expect(minutes(slope)).toBeCloseTo(0.1114, 4);
    expect(minutes(slopeHalfWidth)).toBeCloseTo(0.0092, 4);
    expect(minutes(residualDeviation)).toBeCloseTo(0.0324, 4);
    expect(rSquared).toBeCloseTo(0.953, 3);
    // F is 0.7745; the printed 0.78 was rounded the other way from 0.775.
    expect(data.fit!.f).toBeCloseTo(0.7745, 4);
    expect(data.fit!.probability).toBeCloseTo(0.47, 2);
    expect(data.warnings).toEqual([]);
  });

  it('gives 0.526 min for 4.2 m, the mean ± 0.012 and one door ± 0.067', () => {
    const { value, meanHalfWidth, partsHalfWidth, range } = timeForSize(data, 4.2);
    expect(minutes(value)).toBeCloseTo(0.526, 3);
    expect(minutes(meanHalfWidth)).toBeCloseTo(0.012, 3);
    expect(minutes(partsHalfWidth)).toBeCloseTo(0.067, 3);
    expect(range.standing).toBe('inside');
  });

  it('says that a door larger than any studied lies outside', () => {
    expect(timeForSize(data, 7).range).toMatchObject({ standing: 'outside', side: 'above' });
  });
});

describe('standard data', () => {
  const at = (size: number, times: readonly number[]) => times.map((normalMs) => ({ size, normalMs }));

  it('asks for four sizes with four readings each', () => {
    const readings = [...at(1, [10, 11]), ...at(2, [20, 21]), ...at(3, [30, 31])];
    expect(fitStandardData(readings)!.warnings).toEqual(['few-sizes', 'few-readings']);
  });

  it('says where an element is the same for every size', () => {
    const same = [100, 103, 98, 101];
    const readings = [1, 2, 3, 4].flatMap((size) =>
      at(
        size,
        same.map((ms, place) => ms + ((size + place) % 2)),
      ),
    );
    expect(fitStandardData(readings)!.warnings).toEqual(['constant']);
  });

  it('says where the line bends, and where its constant is below nothing', () => {
    const squares = [1, 2, 3, 4].flatMap((size) =>
      at(
        size,
        [0, 1, 2, 3].map((more) => 100 * size ** 2 + more),
      ),
    );
    expect(fitStandardData(squares)!.warnings).toEqual(['bends', 'negative-constant']);
  });

  it('says where one size decides alone', () => {
    const readings = [1, 1.1, 1.2, 9].flatMap((size) =>
      at(
        size,
        [0, 1, 2, 3].map((more) => 50 * size + more),
      ),
    );
    expect(fitStandardData(readings)!.warnings).toContain('one-size-decides');
  });

  it('is none of one size, or of times that are all the same', () => {
    expect(fitStandardData(at(1, [1, 2, 3]))).toBeNull();
    expect(fitStandardData([...at(1, [5, 5]), ...at(2, [5, 5])])).toBeNull();
  });

  it('takes no other number for a size, such as the revision of the method', () => {
    const rows = fixtureRows('studies/edge-cleaning-by-size-study').map((row, place) => ({
      ...row,
      carried: { method_revision: String(1 + (place % 2)) },
    }));
    expect(sizedElements(rows)).toEqual([]);
  });

  it('comes from studies timed here as well: the size stands on every reading', async () => {
    const study = await openStudy({
      elements: [element('Clean', { driver: 'perimeter, m' })],
      sizes: [{ driver: 'perimeter, m', value: 3.512 }],
    });
    tapAfter(study, 2_000);
    const { row } = studyOf(study.bench).readings[0]!;
    const rows = [row, row, { ...row, carried: { ...row.carried, 'perimeter, m': '4.8' } }];
    expect(sizedElements(rows).map(({ element: name, driver }) => [name, driver])).toEqual([
      ['Clean', 'perimeter, m'],
    ]);
  });
});
