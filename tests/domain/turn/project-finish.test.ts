import { describe, expect, it } from 'vitest';
import type { TurnFact } from '../../../src/domain/records/turn-fact';
import { foldTurn } from '../../../src/domain/turn/fold-turn';
import { isTooEarly, projectFinish } from '../../../src/domain/turn/project-finish';
import { endOfWork, workBetween } from '../../../src/domain/turn/working-line';
import { stampAt } from '../../support/records';
import { change, done, ended, judged, type Line, partL, resumed, stopped, turnRecords } from './turn-script';

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
  it('is said from ten counted parts on, and not to who learns', () => {
    const turn = (count: number, ...more: Line[]) =>
      foldTurn(turnRecords([[0, wanted(20)], ...more, ...parts(count)]));
    expect(projectFinish(turn(9), [], 900_000)).toBeNull();
    expect(projectFinish(turn(10), [], 1_000_000)).not.toBeNull();
    expect([isTooEarly(turn(9)), isTooEarly(turn(10))]).toEqual([true, false]);
    // One that is set aside is a part done, and says nothing about the pace.
    const aside: TurnFact = { kind: 'part-set-aside', partDone: 't:13', cause: 'talk', by: 'K7' };
    expect(projectFinish(turn(10, [0, aside]), [], 1_000_000)).toBeNull();
    const learns: TurnFact = { kind: 'learning-noted', person: 'K7', parts: 90 };
    expect(projectFinish(turn(10, [0, learns]), [], 1_000_000)).toBeNull();
  });

  it('is the parts that are left at their pace, where each takes the same', () => {
    // 10 of 20 in 1000 s: 10 more of 100 s end at 2000 s, whichever are drawn.
    expect(at(1_000, [[0, wanted(20)], ...parts(10)])!.finishMs).toEqual({
      p10: 2_000_000,
      p50: 2_000_000,
      p90: 2_000_000,
    });
  });

  it('says besides what the end would bring with nothing lost any more', () => {
    // 10 parts of 100 s with 300 s stopped in the last; 1,700 s are left at 1,300 s: 10 + 17.
    const stop: Line[] = [
      [900, stopped],
      [1_200, resumed],
    ];
    const lines: Line[] = [planned([], 3_000), ...parts(9), ...stop, [1_300, done()]];
    const found = at(1_300, lines)!;
    expect(found.undisturbedByEnd).toBe(27);
    expect(found.partsByEnd!.p50).toBeLessThan(27);
    expect(at(1_000, [[0, wanted(20)], ...parts(10)])!.undisturbedByEnd).toBeNull();
  });

  it('walks round the breaks of the calendar, and stands still in one', () => {
    const lines: Line[] = [planned([[1_200, 1_800]], null), [0, wanted(20)], ...parts(10)];
    // 200 s of work before the break, 800 s after it: 1800 + 800.
    expect(at(1_000, lines)!.finishMs!.p50).toBe(2_600_000);
    expect(at(1_300, lines)!.finishMs).toEqual(at(1_700, lines)!.finishMs);
  });

  it('is not put off by a calendar with breaks that overlap', () => {
    const overlapping = planned(
      [
        [1_200, 1_800],
        [1_400, 1_600],
        [1_700, 1_900],
      ],
      null,
    );
    expect(at(1_000, [overlapping, [0, wanted(20)], ...parts(10)])!.finishMs!.p50).toBe(2_700_000);
  });

  it('counts good parts: for one that is scrapped another has to be made', () => {
    const lines: Line[] = [[0, wanted(11)], ...parts(10), [1_000, judged(12, 'scrap')]];
    const { p10, p90 } = at(1_000, lines)!.finishMs!;
    // 9 good: two more at least, and further ones where they too turn out as scrap.
    expect(p10).toBe(1_200_000);
    expect(p90).toBeGreaterThan(1_200_000);
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
    // 10 done at 1000 s, shift to 2050 s: 10 more of 100 s fit.
    const found = at(1_000, [planned([], 2_050), ...parts(10)])!;
    expect(found).toMatchObject({ finishMs: null, partsByEnd: { p10: 20, p50: 20, p90: 20 } });
  });

  it('speaks of no end of shift that lies behind: whoever works on has a finish all the same', () => {
    const found = at(1_500, [planned([], 1_200), [0, wanted(20)], ...parts(15)])!;
    expect(found).toMatchObject({ partsByEnd: null, undisturbedByEnd: null, finishMs: { p50: 2_000_000 } });
  });

  it('says nothing without a number and without a shift, after its end, and when all are done', () => {
    expect(at(1_000, parts(10))).toBeNull();
    expect(at(1_000, [planned([], 900), ...parts(10)])).toBeNull();
    expect(at(1_000, [[0, wanted(10)], ...parts(10)])).toBeNull();
    expect(at(1_000, [[0, wanted(20)], [1, wanted(null)], ...parts(10)])).toBeNull();
  });

  it('is the same tomorrow from the same records', () => {
    const lines: Line[] = [
      [0, wanted(40)],
      [90, done()],
      [210, done()],
      [290, done()],
      [400, done()],
      [480, done()],
      [570, done()],
      [690, done()],
      [770, done()],
      [880, done()],
      [960, done()],
    ];
    expect(at(1_000, lines)).toEqual(at(1_000, lines));
    const { p10, p90 } = at(1_000, lines)!.finishMs!;
    expect(p10).toBeLessThan(p90);
  });

  it('does not stretch the chance of ten parts over a shift: the first half of a trial is no morning', () => {
    // Five of 60 s and five of 20 s, and seven hours to go: by hand 400 s for 10, so 25200 / 40 = 630 more.
    const slow = Array.from({ length: 5 }, (_, place): Line => [60 * (place + 1), done()]);
    const quick = Array.from({ length: 5 }, (_, place): Line => [300 + 20 * (place + 1), done()]);
    const { p10, p50, p90 } = at(400, [planned([], 25_600), ...slow, ...quick])!.partsByEnd!;
    expect(Math.abs(p50 - 640)).toBeLessThan(32);
    expect(p10).toBeGreaterThan(640 / 1.5);
    expect(p90).toBeLessThan(1.5 * 640);
  });

  it('asks turns before it that lasted as long and made parts as long, and no others', () => {
    const now = foldTurn(turnRecords([[0, wanted(40)], ...parts(10)]));
    const without = projectFinish(now, [], 1_000_000)!;
    /** Twelve parts of so many seconds each, and half of it lost with each. */
    const turnOf = (eachS: number) =>
      foldTurn(
        turnRecords([
          ...Array.from({ length: 12 }, (_, place): Line[] => [
            [1.5 * eachS * place + eachS / 2, stopped],
            [1.5 * eachS * place + eachS, resumed],
            [1.5 * eachS * (place + 1), done()],
          ]).flat(),
          [18 * eachS, ended],
        ]),
      );
    // Heading for 4000 s: a quarter is 1000 s. 12 parts of 50 s with their losses lasted 900 s; those of 400 s are of
    // another order; those of 200 s lasted an hour, and lost 100 s with each of 30 more parts: 3000 s where it is drawn.
    for (const eachS of [50, 400]) expect(projectFinish(now, [turnOf(eachS)], 1_000_000)).toEqual(without);
    const { finishMs, from } = projectFinish(now, [turnOf(200)], 1_000_000)!;
    expect(from).toEqual({ parts: 10, turns: 1 });
    expect([finishMs!.p10, finishMs!.p90]).toEqual([4_000_000, 7_000_000]);
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
