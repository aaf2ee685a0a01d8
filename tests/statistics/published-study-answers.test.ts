import { describe, expect, it } from 'vitest';
import leftOut from '../../fixtures/published/left-out.json';
import { publishedStudyAnswers } from './published-study-answers';

const answers = publishedStudyAnswers();
// Half a unit of the print's last place, and a hair for the double that a decimal is kept in.
const slack = (printed: number, tolerance: number) => tolerance + Math.abs(printed) * 4e-16;

describe('published answers on cycles, rating, allowances, whole studies, readings and units', () => {
  it.each(answers.filter(({ differs }) => !differs))(
    '$id, $source: $what is $printed',
    ({ printed, tolerance, ours }) => {
      expect(Math.abs(ours - printed)).toBeLessThanOrEqual(slack(printed, tolerance));
    },
  );

  it.each(answers.filter(({ differs }) => differs))(
    '$id, $source: $what is printed as $printed and is $correct',
    ({ printed, tolerance, correct, ours }) => {
      expect(Math.abs(ours - printed)).toBeGreaterThan(slack(printed, tolerance));
      expect(ours).toBeCloseTo(correct!, 5);
    },
  );

  it('number more than seven hundred; each that differs has a note that says why', () => {
    expect(answers.length).toBeGreaterThan(700);
    expect(answers.filter(({ differs, note }) => differs && note === '')).toEqual([]);
  });

  it('that no test can hold are listed with the reason, and nowhere else', () => {
    const held = new Set(answers.map(({ id }) => id));
    expect(leftOut.items.filter(({ id, reason }) => held.has(id) || reason.length < 20)).toEqual([]);
  });
});
