import { describe, expect, it } from 'vitest';
import type { TurnFact } from '../../../src/domain/records/turn-fact';
import { foldTurn } from '../../../src/domain/turn/fold-turn';
import { projectFinish } from '../../../src/domain/turn/project-finish';
import { endOfWork, workBetween } from '../../../src/domain/turn/working-line';
import { stampAt } from '../../support/records';
import { change, done, judged, type Line, partL, resumed, stopped, turnRecords } from './turn-script';

const wanted = (parts: number | null): TurnFact => ({ kind: 'parts-wanted', parts });
/** Breaks and the end of the shift, in seconds from the start of the turn. */
function planned(breaks: readonly [number, number][], ends: number | null): Line {
  const wall = (seconds: number) => stampAt(seconds * 1_000).wallMs;
  return [
    0,
    {
      kind: 'shift-planned',
      breaks: breaks.map(([from, to]) => ({ fromWallMs: wall(from), toWallMs: wall(to) })),
      endsWallMs: ends === null ? null : wall(ends),
    },
  ];
}
/** Parts of 100 s, one after the other. */
const parts = (count: number): Line[] =>
  Array.from({ length: count }, (_, place): Line => [100 * (place + 1), done()]);
const at = (seconds: number, lines: readonly Line[]) =>
  projectFinish(foldTurn(turnRecords(lines)), [], seconds * 1_000);

describe('the projected finish', () => {
  it('is said from five parts on, and not to who learns', () => {
    expect(at(400, [[0, wanted(20)], ...parts(4)])).toBeNull();
    expect(at(500, [[0, wanted(20)], ...parts(5)])).not.toBeNull();
    const learns: TurnFact = { kind: 'learning-noted', person: 'K7', parts: 90 };
    expect(at(500, [[0, wanted(20)], [0, learns], ...parts(5)])).toBeNull();
  });

  it('is the parts that are left at their pace, where each takes the same', () => {
    // 8 of 20 in 800 s: 12 more of 100 s end at 2000 s, whichever are drawn.
    expect(at(800, [[0, wanted(20)], ...parts(8)])!.finishMs).toEqual({
      p10: 2_000_000,
      p50: 2_000_000,
      p90: 2_000_000,
    });
  });

  it('walks round the breaks of the calendar, and stands still in one', () => {
    const lines: Line[] = [planned([[1_000, 1_600]], null), [0, wanted(20)], ...parts(8)];
    // 200 s of work before the break, 1000 s after it: 1600 + 1000.
    expect(at(800, lines)!.finishMs!.p50).toBe(2_600_000);
    expect(at(1_100, lines)!.finishMs).toEqual(at(1_500, lines)!.finishMs);
  });

  it('is not put off by a calendar with breaks that overlap', () => {
    const overlapping = planned(
      [
        [1_000, 1_600],
        [1_200, 1_400],
        [1_500, 1_700],
      ],
      null,
    );
    expect(at(800, [overlapping, [0, wanted(20)], ...parts(8)])!.finishMs!.p50).toBe(2_700_000);
  });

  it('counts good parts: for one that is scrapped another has to be made', () => {
    const lines: Line[] = [[0, wanted(9)], ...parts(8), [800, judged(12, 'scrap')]];
    const { p10, p90 } = at(800, lines)!.finishMs!;
    // 7 good: two more at least, and further ones where they too turn out as scrap.
    expect(p10).toBe(1_000_000);
    expect(p90).toBeGreaterThan(1_000_000);
  });

  it('expects losses as there were, and no planned breaks among them', () => {
    // One stoppage of 200 s in 10 parts: 10 more parts take about 1200 s.
    const lines: Line[] = [[0, wanted(20)], ...parts(9), [950, stopped], [1_150, resumed], [1_200, done()]];
    const { p10, p50, p90 } = at(1_200, lines)!.finishMs!;
    expect(p10).toBe(2_200_000);
    expect(p50).toBeGreaterThan(2_200_000);
    expect(p90).toBeGreaterThan(p50);
  });

  it('takes parts to come in minutes: a larger kind in hand takes its own target', () => {
    // Thirty L at 150 of 150 s come after five M at 90 of 90 s; only L is in the last 30.
    const small = Array.from({ length: 5 }, (_, place): Line => [90 * (place + 1), done()]);
    const large = Array.from({ length: 30 }, (_, place): Line => [450 + 150 * (place + 1), done(partL)]);
    const lines: Line[] = [[0, wanted(36)], ...small, [450, change(partL)], ...large];
    expect(at(4_950, lines)!.finishMs!.p50).toBe(5_100_000);
  });

  it('says, where nobody said how many, how many there will be at the end of the shift', () => {
    // 8 done at 800 s, shift to 2050 s: 12 more of 100 s fit.
    const found = at(800, [planned([], 2_050), ...parts(8)])!;
    expect(found).toMatchObject({ finishMs: null, partsByEnd: { p10: 20, p50: 20, p90: 20 } });
  });

  it('says nothing without a number and without a shift, after its end, and when all are done', () => {
    expect(at(800, parts(8))).toBeNull();
    expect(at(800, [planned([], 700), ...parts(8)])).toBeNull();
    expect(at(800, [[0, wanted(8)], ...parts(8)])).toBeNull();
    expect(at(800, [[0, wanted(20)], [1, wanted(null)], ...parts(8)])).toBeNull();
  });

  it('is the same tomorrow from the same records', () => {
    const lines: Line[] = [
      [0, wanted(40)],
      [90, done()],
      [210, done()],
      [290, done()],
      [400, done()],
      [480, done()],
    ];
    expect(at(500, lines)).toEqual(at(500, lines));
    const { p10, p90 } = at(500, lines)!.finishMs!;
    expect(p10).toBeLessThan(p90);
  });
});

describe('work between breaks', () => {
  const breaks = [
    { fromMs: 30, toMs: 40 },
    { fromMs: 10, toMs: 20 },
  ];

  it('ends where it ends when it stands still in each of them', () => {
    expect([5, 10, 11, 35].map((workMs) => endOfWork(0, workMs, breaks))).toEqual([5, 20, 21, 55]);
    expect(endOfWork(15, 0, breaks)).toBe(20);
  });

  it('is what lies between two places without them', () => {
    expect(workBetween(0, 50, breaks)).toBe(30);
    expect(workBetween(15, 35, breaks)).toBe(10);
    expect(workBetween(12, 18, breaks)).toBe(0);
  });
});
