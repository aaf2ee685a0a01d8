import { describe, expect, it } from 'vitest';
import { fixtureText, inMinutes, onlyStudy, recomputed } from './recomputed-fixture';

/**
 * Printed answers, minutes. `printed` was rounded in the book to the decimals it is written with here;
 * `exact` was worked out from the printed readings with exact fractions, outside this code.
 */
const studies = [
  {
    source: 'Heizer & Render, Operations Management, 11th edition, Example 10.2',
    file: 'heizer-10-2-study.csv',
    means: [9.5, 2.2, 1.5],
    normal: [11.4, 2.31, 1.65],
    normalTime: 15.36,
    printed: { value: 18.07, decimals: 2 },
    exact: 15.36 / 0.85,
  },
  {
    source: 'Heizer & Render, Operations Management, 11th edition, Problem 10.23',
    file: 'heizer-10-23-study.csv',
    means: [2.8, 0.74, 0.46, 0.95],
    normal: [2.38, 0.74, 0.437, 1.1875],
    normalTime: 4.7445,
    printed: { value: 5.4, decimals: 1 },
    exact: 4.7445 / 0.88,
  },
  {
    source: 'Stevenson, Operations Management, 14th edition, page 332, problem 3',
    file: 'stevenson-3-study.csv',
    means: [0.46, 1.505, 0.83, 6.94 / 6],
    normal: [0.414, 1.27925, 0.913, 6.94 / 6],
    normalTime: 0.414 + 1.27925 + 0.913 + 6.94 / 6,
    printed: { value: 4.33, decimals: 2 },
    exact: (0.414 + 1.27925 + 0.913 + 6.94 / 6) * 1.15,
  },
  {
    source: 'Krajewski, Ritzman & Malhotra, Operations Management, Supplement H, Problem 1',
    file: 'krajewski-h-1-study.csv',
    means: [44.8],
    normal: [42.56],
    normalTime: 42.56,
    printed: { value: 48.94, decimals: 2 },
    exact: 48.944,
  },
  {
    source: 'Groover, Work Systems, direct time study example: an irregular element every 5th cycle',
    file: 'groover-irregular-study.csv',
    means: [3.23, 1.25],
    normal: [3.23, 0.25],
    normalTime: 3.48,
    printed: { value: 4.0, decimals: 2 },
    exact: 4.002,
  },
  {
    // No answer is printed with this problem; (a + b + e/6)(1 + A) + max(c(1 + A), d(1 + Am)) by hand.
    source: 'Groover, Work Systems, chapter 13 problem: machine, internal and irregular elements (no key)',
    file: 'groover-machine-study.csv',
    means: [0.47, 0.58, 0.7, 0.75, 2.1],
    normal: [0.423, 0.464, 0.77, 0.75, 0.2975],
    normalTime: 1.9545,
    printed: { value: 2.2477, decimals: 4 },
    exact: 2.247675,
  },
];

describe('a published time study as a readings table', () => {
  it.each(studies.map((study) => [study.source, study] as const))(
    '%s: means, normal and standard time',
    (_, study) => {
      const { elements, normal_time_s, standard_time_s, pieces_per_hour } = onlyStudy(
        fixtureText(`published/${study.file}`),
      );
      expect(elements).toHaveLength(study.means.length);
      for (const [place, element] of elements.entries()) {
        expect(inMinutes(element.observed_mean_s)).toBeCloseTo(study.means[place]!, 9);
        expect(inMinutes(element.normal_per_unit_s)).toBeCloseTo(study.normal[place]!, 9);
      }
      expect(inMinutes(normal_time_s)).toBeCloseTo(study.normalTime, 9);
      const { value, decimals } = study.printed;
      expect(Math.abs(inMinutes(standard_time_s) - value)).toBeLessThanOrEqual(0.5 * 10 ** -decimals);
      expect(inMinutes(standard_time_s)).toBeCloseTo(study.exact, 9);
      expect(pieces_per_hour).toBeCloseTo(60 / study.exact, 9);
    },
  );

  it('Heizer & Render, Example 10.2: the starred readings are counted apart, one, none and one', () => {
    const { elements } = onlyStudy(fixtureText('published/heizer-10-2-study.csv'));
    expect(elements.map(({ n, excluded }) => [n, excluded])).toEqual([
      [4, 1],
      [5, 0],
      [4, 1],
    ]);
  });

  it('Groover, chapter 13 problem: the operator governs, 0.77 against 0.75 min', () => {
    expect(onlyStudy(fixtureText('published/groover-machine-study.csv')).governing).toBe('operator');
  });

  it('Stevenson, problem 7: 4.90 and 8.84 min, the allowance on the worker alone, the rest break left out', () => {
    const { studies: variants } = recomputed(fixtureText('published/stevenson-7-study.csv'));
    expect(variants.map(({ standard_time_s }) => inMinutes(standard_time_s).toFixed(2))).toEqual([
      '4.90',
      '8.84',
    ]);
    // 3.1 + 1.6 × 1.06 × 1.06 and 4.6 + 3.1 × 1.21 × 1.13.
    expect(inMinutes(variants[0]!.standard_time_s)).toBeCloseTo(4.89776, 9);
    expect(inMinutes(variants[1]!.standard_time_s)).toBeCloseTo(8.83863, 9);
    expect(variants.map(({ elements }) => elements.at(-1)!.normal_per_unit_s)).toEqual([0, 0]);
  });

  it('Stevenson, problem 4: an element seen in three cycles of six, averaged over the three, then halved', () => {
    const { elements } = onlyStudy(fixtureText('published/stevenson-4-study.csv'));
    const at = (column: 'observed_mean_s' | 'normal_per_unit_s') =>
      elements.map((element) => Number(inMinutes(element[column]).toFixed(6)));
    // Means of the readings printed in the book, worked out by hand; no key was found.
    expect(at('observed_mean_s')).toEqual([4.1, 1.5, 3.25, 2.766667]);
    expect(at('normal_per_unit_s')).toEqual([4.1, 0.75, 3.25, 2.766667]);
  });

  it('Stevenson, problem 5: frequencies of 5, 3, 6, 2 and 6 in six cycles', () => {
    const { elements } = onlyStudy(fixtureText('published/stevenson-5-study.csv'));
    // Means of the readings printed in the book, worked out by hand; no key was found.
    const means = [2.1, 1.1, 3.4, 4.1, 1.45];
    const frequencies = [5 / 6, 3 / 6, 1, 2 / 6, 1];
    for (const [place, element] of elements.entries()) {
      expect(inMinutes(element.observed_mean_s)).toBeCloseTo(means[place]!, 9);
      expect(inMinutes(element.normal_per_unit_s)).toBeCloseTo(means[place]! * frequencies[place]!, 9);
    }
  });

  it('Krajewski, Supplement H, Application H.1: select times, deviations and required readings at ±6 %', () => {
    const { elements } = onlyStudy(fixtureText('published/krajewski-app-h-1-study.csv'), {
      precision: 0.06,
      confidence: 0.95,
    });
    expect(elements.map(({ n, excluded }) => [n, excluded])).toEqual([
      [9, 0],
      [8, 1],
      [3, 0],
    ]);
    // Answers blanked in the copy seen: (1.96·s/(0.06·x̄))² worked out by hand from the printed readings.
    const expected = [
      { mean: 0.1, deviation: 0.015, raw: 24.01 },
      { mean: 0.1, deviation: 0.0329502, raw: 115.857778 },
      { mean: 0.3, deviation: 0.0360555, raw: 15.413827 },
    ];
    // The book's z is 1.96; the quantile is 1.959964.
    const zSquared = (1.9599639845400545 / 1.96) ** 2;
    for (const [place, { mean, deviation, raw }] of expected.entries()) {
      const element = elements[place]!;
      expect(inMinutes(element.observed_mean_s)).toBeCloseTo(mean, 9);
      expect(inMinutes(element.observed_sd_s)).toBeCloseTo(deviation, 7);
      expect(element.required_n_raw.z! / zSquared).toBeCloseTo(raw, 5);
    }
    // 24.01 is no rounding error of 24: fewer than 25 readings would miss the precision asked.
    expect(elements.map(({ required_n }) => required_n.z)).toEqual([25, 116, 16]);
  });

  it('“Ejercicios de cronometraje resueltos”, D.2 problem 1: t on the pilot, and the error of five readings', () => {
    const { elements } = onlyStudy(fixtureText('published/cronometraje-d2-1-study.csv'), {
      precision: 0.04,
      confidence: 0.95,
    });
    // Printed 207.34 and 62.39 from rounded deviations, 25.70 % and 14.13 %; exact values by hand with t = 2.776445.
    expect(elements[0]!.required_n_raw.t_pilot).toBeCloseTo(207.198253, 3);
    expect(elements[1]!.required_n_raw.t_pilot).toBeCloseTo(62.459624, 3);
    expect(elements.map(({ required_n }) => required_n.t_pilot)).toEqual([208, 63]);
    expect(elements[0]!.precision_pct).toBeCloseTo(25.749454, 3);
    expect(elements[1]!.precision_pct).toBeCloseTo(14.137567, 3);
  });

  it('ILO, Introduction to Work Study: readings 7 6 7 7 6, 8.81 by the short form, so 9', () => {
    const { elements } = onlyStudy(fixtureText('published/ilo-short-form-study.csv'));
    // 8.81 from memory; (40·√(5·219 − 33²)/33)² = 8.815427 by hand.
    expect(elements[0]!.required_n_raw.ilo).toBeCloseTo(8.815427, 6);
    expect(elements[0]!.required_n.ilo).toBe(9);
  });

  it('Krajewski, Supplement H test bank, question 27: a running watch 22 51 72 98 128 150, 59 readings', () => {
    const { elements } = onlyStudy(fixtureText('published/krajewski-h-27-study.csv'), {
      precision: 0.04,
      confidence: 0.95,
    });
    // Element times 22 29 21 26 30 22 s: mean 25, s 3.898718 by hand. Printed: 40 to 55 readings beyond six.
    expect(elements[0]).toMatchObject({ n: 6, observed_mean_s: 25 });
    expect(elements[0]!.observed_sd_s).toBeCloseTo(3.898718, 6);
    expect(elements[0]!.required_n.z).toBe(59);
  });
});
