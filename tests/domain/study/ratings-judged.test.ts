import { describe, expect, it } from 'vitest';
import { endElement } from '../../../src/application/study/end-element';
import { endStudy } from '../../../src/application/study/end-study';
import { importStudies } from '../../../src/application/study/import-studies';
import { rateReading } from '../../../src/application/study/rate-reading';
import { readStudy } from '../../../src/application/study/read-study';
import { ratingsJudged } from '../../../src/domain/study/ratings-judged';
import { fourElements, openStudy, settled, studyOf, tapAfter } from './study-at-the-bench';

/** Load rated by a tap, the machine's run, Clean with the rating that stood. */
async function oneCycle() {
  const at = await openStudy();
  const { bench, clock } = at;
  for (const [rating, judged] of [
    [90, true],
    [90, true],
    [90, false],
  ] as const) {
    clock.pass(3_000);
    endElement(bench, clock.now(), rating, judged);
  }
  return at;
}

describe('ratings of a study', () => {
  it('say which were judged by a tap of their own; the machine’s is nobody’s', async () => {
    const { bench } = await oneCycle();
    expect(studyOf(bench).readings.map(({ judged }) => judged)).toEqual([true, undefined, false]);
    expect(ratingsJudged(studyOf(bench).readings)).toEqual({ judged: 1, all: 2 });
  });

  it('of a paper study are judged where they stand on the sheet; an older one does not say', async () => {
    const at = await openStudy();
    for (const reading of [3_000, 2_000, 4_000]) tapAfter(at, reading);
    const rows = studyOf(at.bench).readings.map(({ row }) => ({ ...row, study: 'typed' }));
    const judgedOf = async (filledIn?: readonly number[]) => {
      const [id] = importStudies(at.bench, 'typed from paper', rows, fourElements, filledIn);
      await settled();
      return (await readStudy(at.bench, id!))?.readings.map(({ judged }) => judged);
    };
    // The second row is the machine's.
    expect(await judgedOf([2, 3])).toEqual([true, undefined, false]);
    expect(await judgedOf()).toEqual([undefined, undefined, undefined]);
  });

  it('are unknown where the records do not say', async () => {
    const at = await openStudy();
    tapAfter(at, 3_000);
    expect(ratingsJudged(studyOf(at.bench).readings)).toBeNull();
  });

  it('are judged late while the study runs, and corrected once it is over, with the first one kept', async () => {
    const { bench, clock } = await oneCycle();
    const last = () => studyOf(bench).readings[2]!;
    rateReading(bench, studyOf(bench), last().id, 95);
    expect(last()).toMatchObject({ judged: true, row: { ratingPct: 95 } });
    expect(last().firstRatingPct).toBeUndefined();
    endStudy(bench, clock.now());
    rateReading(bench, studyOf(bench), last().id, 105);
    expect(last()).toMatchObject({ firstRatingPct: 95, row: { ratingPct: 105 } });
    rateReading(bench, studyOf(bench), last().id, 95);
    expect(last().firstRatingPct).toBeUndefined();
  });
});
