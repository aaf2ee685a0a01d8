import { describe, expect, it } from 'vitest';
import { partRun } from '../../../src/domain/day/part-run';
import { partsMade } from '../../../src/domain/day/parts-made';
import { reviewDay } from '../../../src/domain/day/review-day';
import { done, partM, partV, turnOf } from './turn-of-day';

/** Days on which M took so many seconds, once each, named newest first. */
const daysOfM = (seconds: Record<string, number>) =>
  Object.entries(seconds).map(([day, s]) => reviewDay(day, [turnOf([[s, done()]])]));

describe('partRun', () => {
  it('goes from the oldest day to the newest and takes the median of the daily averages', () => {
    // 80, 100, 95 and 120 in order of size 80, 95, 100, 120: the median is (95 + 100)/2 = 97.5.
    const days = daysOfM({ '2026-03-05': 120, '2026-03-04': 95, '2026-03-03': 100, '2026-03-02': 80 });
    const run = partRun(days, partM.part);
    expect(run.days.map(({ of }) => of.meanMs)).toEqual([80_000, 100_000, 95_000, 120_000]);
    expect(run.medianMs).toBe(97_500);
  });

  it('counts each day once, however many parts it had', () => {
    // 100 parts of 60 s on one day, one of 90 s and one of 120 s on others: the median of days is 90.
    const many = turnOf(Array.from({ length: 100 }, (_, place) => [60 * (place + 1), done()] as const));
    const days = [reviewDay('2026-03-02', [many]), ...daysOfM({ '2026-03-03': 90, '2026-03-04': 120 })];
    expect(partRun(days, partM.part).medianMs).toBe(90_000);
  });

  it('leaves out the days on which the part was not made, and has no median without a day', () => {
    const days = [...daysOfM({ '2026-03-02': 80 }), reviewDay('2026-03-03', [turnOf([[130, done(partV)]])])];
    expect(partRun(days, partM.part).days.map(({ day }) => day)).toEqual(['2026-03-02']);
    expect(partRun(days, 'p-unknown')).toEqual({ days: [], steps: [], medianMs: null });
  });

  it('has a step where the method changed, and takes the median of the days since then', () => {
    // Before: 140 and 150. Since the 4th: 80, 90 and 100, so the median is 90; over all five it would be 100.
    const days = daysOfM({
      '2026-03-02': 140,
      '2026-03-03': 150,
      '2026-03-04': 80,
      '2026-03-05': 100,
      '2026-03-06': 90,
    });
    const run = partRun(days, partM.part, [
      { revision: 1, writtenOn: '2026-02-01' },
      { revision: 2, writtenOn: '2026-03-04' },
    ]);
    expect(run.steps).toEqual([{ from: 2, revision: 2 }]);
    expect(run.medianMs).toBe(90_000);
  });

  it('steps at the next day made when the method changed on a day without the part, once for two changes', () => {
    const days = daysOfM({ '2026-03-02': 140, '2026-03-06': 80 });
    const methods = [
      { revision: 1, writtenOn: '2026-03-03' },
      { revision: 2, writtenOn: '2026-03-04' },
      { revision: 3, writtenOn: '2026-03-09' },
    ];
    expect(partRun(days, partM.part, methods).steps).toEqual([{ from: 1, revision: 2 }]);
  });
});

describe('partsMade', () => {
  it('names every part once, with its newest code and all that was done of it', () => {
    const renamed = { ...partM, partCode: 'M-2' };
    const days = [
      reviewDay('2026-03-03', [
        turnOf([
          [80, done(renamed)],
          [200, done(partV)],
        ]),
      ]),
      reviewDay('2026-03-02', [
        turnOf([
          [80, done()],
          [160, done()],
        ]),
      ]),
    ];
    expect(partsMade(days)).toEqual([
      { part: 'p-m', partCode: 'M-2', done: 3 },
      { part: 'p-v', partCode: 'V', done: 1 },
    ]);
  });
});
