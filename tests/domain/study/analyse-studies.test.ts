import { describe, expect, it } from 'vitest';
import { analyseStudies, type StudyInAnalysis } from '../../../src/domain/study/analyse-studies';
import { compareWithStandard } from '../../../src/domain/study/compare-with-standard';
import { isLaterStudy, standardDue } from '../../../src/domain/study/standard-due';
import type { Study } from '../../../src/domain/study/study';
import { cycleTimes } from '../../../src/domain/study/study-progress';
import type { StudyRow } from '../../../src/domain/study/study-row';
import { studentQuantile } from '../../../src/statistics/student-quantile';
import { welchComparison } from '../../../src/statistics/welch-comparison';
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

describe('the uncertainty of a standard time', () => {
  /** Ten cycles: a hand loads for 0.119 min on average, then the machine runs 0.122 min; nobody judges the machine. */
  const machined = (more: Partial<StudyRow>[] = []): StudyInAnalysis => {
    const row = {
      ...demo.rows[0]!,
      elementClass: 'repetitive',
      placement: 'external',
      excluded: null,
    } as const;
    const plain = { ...row, unitsPerOccurrence: 1, partsPerCycle: 1, ratingPct: 100 };
    const rows = Array.from({ length: 10 }, (_, place) => [
      {
        ...plain,
        cycle: place + 1,
        elementNo: 1,
        element: 'Load',
        work: 'manual' as const,
        observedMs: 7_140 + (place % 2 ? 600 : -600),
      },
      {
        ...plain,
        cycle: place + 1,
        elementNo: 2,
        element: 'Run',
        work: 'machine' as const,
        observedMs: 7_320,
      },
    ]).flat();
    const further = more.map((change) => ({
      ...plain,
      elementClass: 'occasional' as const,
      elementNo: 3,
      ...change,
    }));
    return { ...demo, rows: [...rows, ...further] };
  };
  const noAllowance = { allowancePct: 0, basis: 'normal_time', machineAllowancePct: 0 } as const;

  it('has ± 5 % of the rating on the time that was rated only: 2.5 % where the machine runs half of it', () => {
    const { rating, sampling, uncertainty } = analyseStudies([machined()], noAllowance);
    // By hand: 5 % · 0.119 ÷ 0.241 = 2.469 %.
    expect(rating * 100).toBeCloseTo(2.469, 3);
    expect(uncertainty!).toBeCloseTo(Math.hypot(sampling!, rating), 12);
    // With 12 % on the operator alone: 5 % · 0.13328 ÷ 0.25528.
    expect(analyseStudies([machined()], { ...noAllowance, allowancePct: 12 }).rating * 100).toBeCloseTo(
      2.6105,
      3,
    );
  });

  it('has it on no occasional run of a machine either', () => {
    const flush = {
      element: 'Flush',
      work: 'machine',
      cycle: 5,
      unitsPerOccurrence: 10,
      observedMs: 24_100,
    } as const;
    const { rating } = analyseStudies([machined([flush])], noAllowance);
    // 0.119 of 0.241 + 0.401667 ÷ 10 min.
    expect(rating * 100).toBeCloseTo((5 * 7_140) / (14_460 + 2_410), 6);
  });

  it('has the whole of it where there is no machine, or where the operator is the longer branch', () => {
    expect(analyseStudies([demo], { ...terms, machineAllowancePct: 0 }).together.governing).toBe('operator');
    expect(analyseStudies([demo], terms).rating).toBeCloseTo(0.05, 12);
  });

  it('names occasional elements of fewer than five readings: their spread is unknown, and in no term', () => {
    const blade = (observedMs: number, cycle: number) =>
      ({ element: 'Blade', work: 'manual', cycle, unitsPerOccurrence: 10, observedMs }) as const;
    const one = analyseStudies([machined([blade(60_000, 5)])], noAllowance);
    expect([one.unknownSpread, one.frequency]).toEqual([['Blade'], 0]);
    const times = [50_000, 70_000, 50_000, 70_000, 60_000];
    const five = analyseStudies([machined(times.map((ms, place) => blade(ms, place + 1)))], noAllowance);
    // s = 10 s, t(0.975, 4) = 2.7764: ± 12.417 s, a tenth of it in each part of 14.46 + 6 s.
    expect(five.unknownSpread).toEqual([]);
    expect(five.frequency).toBeCloseTo(1.2417 / 20.46, 4);
  });

  it('says of two operator-days how many alike would do: t is 12.7 with one degree of freedom', () => {
    const { moreDays, sampling } = analyseStudies([demo, slower], terms);
    expect(moreDays!.t).toBeCloseTo(12.706, 3);
    // s of an operator-day = h · √2 ÷ t; with as many as are named, t · s ÷ √g is within 5 %, with one fewer not.
    const half = (groups: number) =>
      (studentQuantile(0.975, groups - 1) * ((sampling! * Math.SQRT2) / moreDays!.t)) / Math.sqrt(groups);
    expect(half(moreDays!.needed)).toBeLessThanOrEqual(0.05);
    expect(half(moreDays!.needed - 1)).toBeGreaterThan(0.05);
    expect(analyseStudies([demo], terms).moreDays).toBeNull();
  });
});

describe('a change against a standard', () => {
  const now = { ...slower, id: 't:9' };
  const all = [demo, slower, now];

  it('is the difference of the mean cycles with its Welch interval', () => {
    const cycles = (study: StudyInAnalysis) => cycleTimes(study.rows);
    const found = compareWithStandard([now], { studies: ['t:1'] }, all)!;
    expect(found).toEqual(welchComparison(cycles(now), cycles(demo)));
    expect(found.lower).toBeGreaterThan(0);
  });

  it('is not said while a study is on both sides, one of the standard’s is missing, or cycles are few', () => {
    expect(compareWithStandard([now, demo], { studies: ['t:1'] }, all)).toBeNull();
    expect(compareWithStandard([now], { studies: ['t:1', 't:77'] }, all)).toBeNull();
    const few = { ...now, rows: now.rows.filter(({ cycle }) => cycle < 5) };
    expect(compareWithStandard([few], { studies: ['t:1'] }, all)).toBeNull();
  });
});

describe('a study shows drift', () => {
  const standard = { methodRevision: 2, issuedOn: '2026-03-02', issuedAtMs: 5_000 };
  const timed = (wallMs: number, methodRevision: number | null = 2) =>
    isLaterStudy(
      {
        study: { heading: {}, startedAt: { wallMs } } as unknown as Study,
        day: '2026-03-02',
        methodRevision,
      },
      standard,
    );

  it('only of the same method, and only where it began after the standard was issued, on that very day too', () => {
    expect([timed(4_000), timed(6_000), timed(6_000, 1), timed(6_000, null)]).toEqual([
      false,
      true,
      false,
      true,
    ]);
  });

  it('from a sheet or a table, which has a day alone, from the next day on', () => {
    const written = (day: string) =>
      isLaterStudy(
        {
          study: { heading: null, startedAt: { wallMs: 9_000 } } as unknown as Study,
          day,
          methodRevision: null,
        },
        standard,
      );
    expect([written('2026-03-01'), written('2026-03-02'), written('2026-03-03')]).toEqual([
      false,
      false,
      true,
    ]);
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
