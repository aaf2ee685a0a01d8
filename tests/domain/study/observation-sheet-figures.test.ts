import { describe, expect, it } from 'vitest';
import { beginForeign } from '../../../src/application/study/begin-foreign';
import { excludeReading } from '../../../src/application/study/exclude-reading';
import { missBreakPoint } from '../../../src/application/study/miss-break-point';
import { elementSoFar } from '../../../src/domain/study/element-so-far';
import { exclusionEffect } from '../../../src/domain/study/exclusion-effect';
import { foreignLetters } from '../../../src/domain/study/foreign-letters';
import { ratedInterval } from '../../../src/domain/study/rated-interval';
import { summariseStudy } from '../../../src/domain/study/summarise-study';
import { unseenElements } from '../../../src/domain/study/unseen-elements';
import { element, openStudy, studyOf, tapAfter } from './study-at-the-bench';

async function loads(times: readonly number[], ratings: readonly number[] = []) {
  const at = await openStudy({ elements: [element('Load')] });
  for (const [place, ms] of times.entries()) tapAfter(at, ms, ratings[place] ?? 100);
  const rows = () => studyOf(at.bench).readings.map(({ row }) => row);
  const leaveOut = (place: number) =>
    excludeReading(at.bench, studyOf(at.bench), studyOf(at.bench).readings[place]!.id, 'interruption');
  return { ...at, rows, leaveOut };
}

describe('foreignLetters', () => {
  it('puts each foreign element into the element that it was timed apart from', async () => {
    const at = await openStudy();
    beginForeign(at.bench, at.clock.now());
    tapAfter(at, 700);
    tapAfter(at, 2_000);
    beginForeign(at.bench, at.clock.now());
    tapAfter(at, 400);
    tapAfter(at, 5_000);
    const { readings } = studyOf(at.bench);
    const [, load, , run] = readings;
    expect(foreignLetters(readings).map(({ letter, inside }) => [letter, inside])).toEqual([
      ['A', load!.id],
      ['B', run!.id],
    ]);
  });

  it('puts it into the merged reading when a break point was missed meanwhile', async () => {
    const at = await openStudy();
    missBreakPoint(at.bench);
    beginForeign(at.bench, at.clock.now());
    tapAfter(at, 700);
    tapAfter(at, 5_000);
    const { readings } = studyOf(at.bench);
    expect(foreignLetters(readings)[0]!.inside).toBe(readings.at(-1)!.id);
  });

  it('says that it does not know when nothing of the cycle follows', async () => {
    const at = await openStudy();
    beginForeign(at.bench, at.clock.now());
    tapAfter(at, 700);
    expect(foreignLetters(studyOf(at.bench).readings)[0]!.inside).toBeNull();
  });

  it('goes on with AA after Z', async () => {
    const at = await openStudy();
    for (let count = 0; count < 28; count += 1) {
      beginForeign(at.bench, at.clock.now());
      tapAfter(at, 100);
    }
    const letters = foreignLetters(studyOf(at.bench).readings).map(({ letter }) => letter);
    expect([letters[0], letters[25], letters[26], letters[27]]).toEqual(['A', 'Z', 'AA', 'AB']);
  });
});

describe('exclusionEffect', () => {
  it('tells the side on which the readings left out lie', async () => {
    const { rows, leaveOut } = await loads([1_000, 1_000, 5_000, 200]);
    expect(exclusionEffect(rows())).toEqual({ excluded: 0, timed: 0, share: 0, side: null });
    leaveOut(2);
    // The mean of those used is then 733 ms; 5 000 ms lies above it.
    expect(exclusionEffect(rows())).toEqual({ excluded: 1, timed: 1, share: 0.25, side: 'above' });
    leaveOut(3);
    expect(exclusionEffect(rows()).side).toBe('both');
  });

  it('compares no time that a missed break point joined from two elements', async () => {
    const { rows } = await loads([1_000, 1_000, 1_000]);
    const [first, ...rest] = rows();
    const joined = { ...first!, observedMs: 6_000, excluded: 'missed-break-point' };
    const unseen = { ...first!, observedMs: null, excluded: 'missed-break-point' };
    const talk = { ...first!, observedMs: 3_000, excluded: 'talk' };
    expect(exclusionEffect([...rest, joined, unseen])).toMatchObject({ excluded: 2, timed: 0, side: null });
    expect(exclusionEffect([...rest, joined, unseen, talk])).toMatchObject({
      excluded: 3,
      timed: 1,
      side: 'above',
    });
  });

  it('tells no side when every reading is left out', async () => {
    const { rows, leaveOut } = await loads([1_000]);
    leaveOut(0);
    expect(exclusionEffect(rows())).toEqual({ excluded: 1, timed: 1, share: 1, side: null });
  });
});

describe('elementSoFar', () => {
  it('counts the readings used and takes their mean', async () => {
    const { bench, leaveOut } = await loads([1_000, 3_000, 9_000]);
    leaveOut(2);
    expect(elementSoFar(studyOf(bench).readings, 1)).toEqual({ n: 2, observedMeanMs: 2_000 });
    expect(elementSoFar(studyOf(bench).readings, 2)).toEqual({ n: 0, observedMeanMs: null });
  });
});

describe('ratedInterval', () => {
  it('shows the steps that lead to the ± of the summary sheet', async () => {
    // Heizer & Render, Operations Management, problem 10.26: 3.5 3.2 4.1 3.6 3.9, mean 3.66, s 0.351.
    const { rows } = await loads([3_500, 3_200, 4_100, 3_600, 3_900]);
    const interval = ratedInterval(rows(), 0.95)!;
    expect(interval.mean).toBeCloseTo(3_660, 9);
    expect(interval.standardDeviation).toBeCloseTo(351, 0);
    // Student's t, 4 degrees of freedom, two-sided 95 %: 2.776 in every printed table.
    expect(interval.t).toBeCloseTo(2.776, 3);
    const [load] = summariseStudy(rows()).elements;
    expect(interval.halfWidth / interval.mean).toBeCloseTo(load!.precision!, 12);
  });

  it('stands on rated times', async () => {
    const { rows } = await loads([2_000, 1_000], [100, 200]);
    // 2 000 × 100 % and 1 000 × 200 % are the same normal time.
    expect(ratedInterval(rows(), 0.95)).toMatchObject({ mean: 2_000, standardDeviation: 0, halfWidth: 0 });
  });

  it('says nothing about one reading', async () => {
    const { rows } = await loads([2_000]);
    expect(ratedInterval(rows(), 0.95)).toBeNull();
  });
});

describe('unseenElements', () => {
  it('names the elements of the method without a reading', async () => {
    const at = await openStudy();
    for (const ms of [2_000, 5_000, 3_000]) tapAfter(at, ms);
    expect(unseenElements(studyOf(at.bench))).toEqual(['Blade']);
  });
});
