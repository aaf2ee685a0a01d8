import { describe, expect, it } from 'vitest';
import { analyseStudies, type StudyInAnalysis } from '../../../src/domain/study/analyse-studies';
import { onBasis } from '../../../src/domain/study/same-basis';
import { standardDue } from '../../../src/domain/study/standard-due';
import { fixtureRows } from './demo-rows';

const terms = { allowancePct: 14, basis: 'normal_time', machineAllowancePct: 4 } as const;
const demo: StudyInAnalysis = {
  id: 't:1',
  title: 'M, K7',
  operator: 'K7',
  day: '2026-03-24',
  rows: fixtureRows(),
};
/** The same work by another person on another day, a tenth slower throughout. */
const slower: StudyInAnalysis = {
  ...demo,
  id: 't:2',
  operator: 'M2',
  day: '2026-03-25',
  rows: demo.rows.map((row) => ({
    ...row,
    observedMs: row.observedMs === null ? null : row.observedMs * 1.1,
  })),
};

describe('the analysis of studies', () => {
  it('of one study is that study: 1.516 min by the first convention, 1.546 by the second', () => {
    const minutes = (basis: 'normal_time' | 'shift') =>
      analyseStudies([demo], { ...terms, basis }).together.standardTimeMs! / 60_000;
    expect(minutes('normal_time')).toBeCloseTo(1.516, 3);
    expect(minutes('shift')).toBeCloseTo(1.546, 3);
  });

  it('counts every reading once, and shows each study beside the whole', () => {
    const { together, each, cycles, operators, days, groups } = analyseStudies([demo, slower], terms);
    expect(together.elements[0]!.n).toBe(each[0]!.elements[0]!.n + each[1]!.elements[0]!.n);
    expect({ cycles, operators, days, groups }).toEqual({
      cycles: 56,
      operators: ['K7', 'M2'],
      days: ['2026-03-24', '2026-03-25'],
      groups: 2,
    });
    expect(together.standardTimeMs! / each[0]!.standardTimeMs!).toBeCloseTo(1.05, 2);
  });

  it('is far less sure of the job with two operators that differ than one of them was of a morning', () => {
    const one = analyseStudies([demo], terms);
    const both = analyseStudies([demo, slower], terms);
    expect(one.sampling!).toBeLessThan(0.025);
    expect(both.sampling!).toBeGreaterThan(10 * one.sampling!);
    expect(one.uncertainty!).toBeCloseTo(Math.hypot(one.sampling!, 0.05), 12);
  });

  it('takes two studies of one operator on one day as one operator-day', () => {
    expect(analyseStudies([demo, { ...demo, id: 't:3' }], terms).groups).toBe(1);
  });

  it('refuses to say anything about no reading', () => {
    expect(() => analyseStudies([], terms)).toThrow('analyseStudies requires at least one study');
  });
});

describe('allowances on another basis', () => {
  it('are 17.65 % of normal time for 15 % of the shift, line by line, and 15 % on the way back', () => {
    const shift = {
      allowancePct: 15,
      basis: 'shift',
      machineAllowancePct: 0,
      lines: [
        { name: 'personal', pct: 5 },
        { name: 'fatigue', pct: 10 },
      ],
    } as const;
    const normal = onBasis(shift, 'normal_time');
    expect(normal.allowancePct).toBeCloseTo(17.65, 2);
    expect(normal.lines!.reduce((sum, { pct }) => sum + pct, 0)).toBeCloseTo(normal.allowancePct, 12);
    expect(onBasis(normal, 'shift').allowancePct).toBeCloseTo(15, 12);
  });
});

describe('a standard is due for a check study', () => {
  const standard = {
    standardTimeMs: 90_960,
    normalTimeMs: 80_000,
    terms,
    methodRevision: 2,
    conditions: 'feed: 100 %',
    studies: ['t:1', 't:2'],
    cycles: 56,
    operators: ['K7', 'M2'],
    days: ['2026-03-24', '2026-03-25'],
    uncertainty: 0.06,
    inForceOn: '2026-04-01',
    checkBy: '2027-04-01',
    issuedBy: 'E1',
  };
  const quiet = {
    day: '2026-05-01',
    method: { revision: 2, conditions: 'feed: 100 %' },
    laterNormalMs: [80_000 * 1.04],
  };

  it('for no cause while nothing changed', () => {
    expect(standardDue(standard, quiet)).toEqual([]);
  });

  it('when its day has come', () => {
    expect(standardDue(standard, { ...quiet, day: '2027-04-01' })).toEqual(['date']);
  });

  it('when the method has another revision, and when its conditions are others', () => {
    expect(standardDue(standard, { ...quiet, method: { revision: 3, conditions: 'feed: 70 %' } })).toEqual([
      'method',
      'conditions',
    ]);
  });

  it('when a later study lies more than 5 % from it', () => {
    expect(standardDue(standard, { ...quiet, laterNormalMs: [80_000 * 0.94] })).toEqual(['drift']);
  });

  it('while it rests on one operator', () => {
    expect(standardDue({ ...standard, operators: ['K7'] }, quiet)).toEqual(['one-operator']);
  });
});
