import { describe, expect, it } from 'vitest';
import { summariseDay } from '../../../src/domain/day/summarise-day';
import { runFigures } from '../../../src/domain/weeks/run-figures';
import { done, partM, partV, turnOf } from '../day/turn-of-day';

const dayOf = (name: string, ...happened: Parameters<typeof turnOf>[0][]) =>
  summariseDay(
    name,
    happened.map((each) => ({ turn: turnOf(each), absorbedMs: new Map(), breaks: [] })),
    null,
  );
const made = dayOf('2026-03-03', [
  [90, done()],
  [210, done()],
  [210, { kind: 'part-judged', partDone: 't:3', outcome: 'rework' }],
  [340, done(partV)],
]);
const untargeted = dayOf('2026-03-02', [[60, done({ ...partM, targetMs: null })]]);
const empty = dayOf('2026-03-04', []);

describe('the figures that can be followed', () => {
  it('come oldest first, and a day that has none is left out', () => {
    const days = [empty, made, untargeted];
    expect(runFigures(days, 'per-good').map(({ day }) => day)).toEqual(['2026-03-02', '2026-03-03']);
    // Without a target nobody can tell what was earned.
    expect(runFigures(days, 'efficiency').map(({ day }) => day)).toEqual(['2026-03-03']);
    expect(runFigures([], 'first-pass')).toEqual([]);
  });

  it('of a day that was attended for less than two thirds of the usual are those of a part of one', () => {
    const long = (name: string, minutes: number) => dayOf(name, [[60 * minutes, done()]]);
    const days = [
      long('2026-03-02', 90),
      long('2026-03-03', 60),
      long('2026-03-04', 59),
      long('2026-03-05', 90),
    ];
    // The days are 59, 60, 90 and 90 minutes: the middle is 75, two thirds of it 50.
    expect(runFigures(days, 'per-good').map(({ isPartDay }) => isPartDay)).toEqual([
      false,
      false,
      false,
      false,
    ]);
    const usual = [...days, long('2026-03-06', 90)];
    // Now the middle is 90, and 60 are two thirds.
    expect(runFigures(usual, 'per-good').map(({ isPartDay }) => isPartDay)).toEqual([
      false,
      false,
      true,
      false,
      false,
    ]);
  });

  it('are percent, or minutes', () => {
    const [efficiency] = runFigures([made], 'efficiency');
    // 90 + 90 + 130 s earned in 340 s.
    expect(efficiency!.value).toBeCloseTo((100 * 310) / 340, 9);
    expect(runFigures([made], 'first-pass')[0]!.value).toBeCloseTo(200 / 3, 9);
    expect(runFigures([made], 'per-good')[0]!.value).toBeCloseTo(340 / 3 / 60, 9);
    expect(runFigures([made], { part: partM.part })).toMatchObject([
      { value: 105 / 60, count: 2, isFew: true, target: 1.5 },
    ]);
  });
});
