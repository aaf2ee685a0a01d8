import { describe, expect, it } from 'vitest';
import { publishedAnswers } from './published-answers';

const answers = publishedAnswers();
// The same rounding that the print had: half a unit of its last place, and a hair for the double it is kept in.
const slack = (printed: number, tolerance: number) => tolerance + Math.abs(printed) * 4e-16;

describe('published answers on charts, comparison, learning and regression', () => {
  it.each(answers.filter(({ differs }) => !differs))(
    '$id $what is $printed',
    ({ printed, tolerance, ours }) => {
      expect(Math.abs(ours - printed)).toBeLessThanOrEqual(slack(printed, tolerance));
    },
  );

  it.each(answers.filter(({ differs }) => differs))(
    '$id $what is misprinted as $printed and is $correct',
    ({ printed, tolerance, correct, ours }) => {
      expect(Math.abs(ours - printed)).toBeGreaterThan(tolerance);
      expect(ours).toBeCloseTo(correct!, 5);
    },
  );

  it('number more than five hundred, and those that differ are the ones with a note that says why', () => {
    expect(answers.length).toBeGreaterThan(500);
    expect(answers.filter(({ differs, note }) => differs && note === '')).toEqual([]);
  });
});
