import { describe, expect, it } from 'vitest';
import { attendedSpans } from '../../../src/domain/day/attended-spans';
import { compareDays } from '../../../src/domain/day/compare-days';
import { dayFigures } from '../../../src/domain/day/day-figures';
import { dayGap } from '../../../src/domain/day/day-gap';
import { goodPartBridge } from '../../../src/domain/day/good-part-bridge';
import { hourBoard } from '../../../src/domain/day/hour-board';
import { reviewDay } from '../../../src/domain/day/review-day';
import { summariseDay } from '../../../src/domain/day/summarise-day';
import type { TurnFact } from '../../../src/domain/records/turn-fact';
import type { Turn } from '../../../src/domain/turn/turn';
import { beforeAfter } from '../../../src/domain/weeks/before-after';
import { daysRun } from '../../../src/domain/weeks/days-run';
import { meanChartAlarms } from '../../../src/domain/weeks/mean-chart-alarms';
import { runFigures } from '../../../src/domain/weeks/run-figures';
import { suspectStandards } from '../../../src/domain/weeks/suspect-standards';
import { done, partM, turnOf } from './turn-of-day';

type Happened = readonly (readonly [number, TurnFact])[];

const stopped: Happened = [
  [60, { kind: 'stopped' }],
  [600, { kind: 'resumed' }],
  [900, { kind: 'turn-ended' }],
];
const scrapped = (place: number): [number, TurnFact] => [
  100 * place + 1,
  { kind: 'part-judged', partDone: `t:${2 * place}`, outcome: 'scrap' },
];
/** Three parts, each of another target: it was changed after the first, and withdrawn after the second. */
const retargeted: Happened = [
  [100, done(partM)],
  [200, done({ ...partM, targetMs: 80_000 })],
  [300, done({ ...partM, targetMs: null })],
];

const odd: Record<string, readonly Turn[]> = {
  'without a turn': [],
  'on which a turn only began': [turnOf([])],
  'without a part': [turnOf([[900, { kind: 'turn-ended' }]])],
  'of stoppages alone': [turnOf(stopped)],
  'of one part': [turnOf([[100, done()]])],
  'of one part at the moment the turn began': [turnOf([[0, done()]])],
  'of scrap alone': [turnOf([[100, done()], scrapped(1), [200, done()], scrapped(2)])],
  'whose target was changed and withdrawn': [turnOf(retargeted)],
  'of two tablets on one station': [
    turnOf([
      [100, done()],
      [200, done()],
    ]),
    turnOf(
      [
        [100, done()],
        [210, done()],
      ],
      { sequence: 100 },
    ),
  ],
};

/** Where a value is no number that can be printed. */
function unprintable(value: unknown, path = ''): string[] {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [`${path} ${value}`];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([name, of]) => unprintable(of, `${path}.${name}`));
}

const daysOf = (turns: readonly Turn[], day: string) => {
  const of = turns.map((turn) => ({ turn, absorbedMs: new Map<string, number>(), breaks: [] }));
  return summariseDay(day, of, 100_000);
};
const plain = daysOf(
  [turnOf(Array.from({ length: 30 }, (_, place) => [90 * (place + 1), done()] as const))],
  'x',
);

describe('a day', () => {
  for (const [name, turns] of Object.entries(odd)) {
    it(`${name} has no figure that is not a number`, () => {
      const day = daysOf(turns, '2026-03-02');
      const attended = turns.map((turn) => ({
        turn,
        absorbedMs: new Map<string, number>(),
        breaks: [],
        spans: attendedSpans(turn, []),
      }));
      const weeks = Array.from({ length: 12 }, (_, place) => ({
        ...day,
        day: `2026-03-${String(place + 1).padStart(2, '0')}`,
      }));
      const terms = {
        part: null,
        beforeFrom: weeks[0]!.day,
        beforeTo: weeks[5]!.day,
        afterFrom: weeks[6]!.day,
        afterTo: weeks[11]!.day,
        thresholdPct: 10,
        title: '',
      };
      const runs = (['efficiency', 'per-good', 'first-pass', { part: partM.part }] as const).map((figure) =>
        daysRun(runFigures(weeks, figure), []),
      );
      expect(
        unprintable({
          day,
          figures: dayFigures(day),
          review: { ...reviewDay('2026-03-02', turns), turns: [] },
          board: hourBoard(attended, 100_000),
          bridge: goodPartBridge(day),
          gaps: [dayGap(day, plain), dayGap(plain, day), dayGap(day, day)],
          compared: [compareDays(day, plain), compareDays(plain, day)],
          runs,
          alarms: meanChartAlarms(weeks),
          suspects: suspectStandards(weeks),
          beforeAfter: beforeAfter(weeks.slice(0, 6), weeks.slice(6), terms),
        }),
      ).toEqual([]);
    });
  }

  it('of scrap alone has parts done, none good, and no efficiency', () => {
    const day = daysOf(odd['of scrap alone']!, '2026-03-02');
    expect([day.done, day.good, day.scrap]).toEqual([2, 0, 2]);
    expect(dayFigures(day)).toMatchObject({ efficiency: null, perGoodMs: null, mixMs: null });
  });

  it('whose target was withdrawn measures each part by its own, and tells no efficiency', () => {
    const day = daysOf([turnOf(retargeted)], '2026-03-02');
    expect(day).toMatchObject({ untargeted: 1, earnedMs: 170_000 });
    expect(day.parts).toMatchObject([{ targetMs: null, targetChanged: true }]);
    expect(dayFigures(day).efficiency).toBeNull();
  });
});
