import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dayFigures } from '../../../src/domain/day/day-figures';
import { goodPartBridge } from '../../../src/domain/day/good-part-bridge';
import { reviewDay } from '../../../src/domain/day/review-day';
import { summariseDay, type TurnToSummarise } from '../../../src/domain/day/summarise-day';
import type { Turn } from '../../../src/domain/turn/turn';
import { anyTurn } from './random-day';
import { done, partM, turnOf } from './turn-of-day';

const plain = (turn: Turn): TurnToSummarise => ({ turn, absorbedMs: new Map(), breaks: [] });
const summed = (...turns: Turn[]) => summariseDay('2026-03-02', turns.map(plain), null);

describe('the summary of a day', () => {
  it('agrees with the day as it is read in full, for any turns', () => {
    fc.assert(
      fc.property(anyTurn(1), anyTurn(100), (one, two) => {
        const summary = summariseDay('2026-03-02', [one, two], null);
        const full = reviewDay('2026-03-02', [one.turn, two.turn]);
        expect([summary.done, summary.counted, summary.good, summary.rework, summary.scrap]).toEqual([
          full.done,
          full.counted,
          full.good,
          full.rework,
          full.scrap,
        ]);
        expect(summary.attendedMs).toBe(full.elapsedMs);
        expect(summary.totals).toEqual(full.totals);
        for (const part of full.parts) {
          const account = summary.parts.find((each) => each.part === part.part)!;
          expect([account.n, account.counted, account.good]).toEqual([part.n, part.counted, part.good]);
          expect(account.deviationMs).toEqual(part.deviationMs);
          if (part.meanMs !== null) expect(account.netMs / account.counted).toBeCloseTo(part.meanMs, 6);
        }
      }),
      { numRuns: 60 },
    );
  });

  it('gives each part the attended time that its taps closed: with the rest of the turn they add up', () => {
    fc.assert(
      fc.property(anyTurn(), (one) => {
        const { parts, attendedMs } = summariseDay('2026-03-02', [one], null);
        const afterLastMs = one.turn.lastAtMs - (one.turn.cycles.at(-1)?.toMs ?? 0);
        const closedMs = parts.reduce((sum, part) => sum + part.attendedMs, 0);
        expect(closedMs + afterLastMs).toBe(attendedMs);
      }),
      { numRuns: 60 },
    );
  });

  it('has gross time longer than net time by the stoppages between the taps, set-ups left out', () => {
    const { parts } = summed(
      turnOf([
        [90, done()],
        [100, { kind: 'stopped' }],
        [130, { kind: 'resumed' }],
        [190, done()],
        [200, { kind: 'stopped' }],
        [240, { kind: 'resumed' }],
        [240, { kind: 'stoppage-explained', stoppage: 't:6', reason: 's', label: '', category: 'set-up' }],
        [300, done()],
      ]),
    );
    expect(parts[0]).toMatchObject({ netMs: 90_000 + 70_000 + 70_000, grossMs: 260_000 });
  });

  it('counts a set-up once, and lets it earn what the shop set', () => {
    const turn = turnOf([
      [10, { kind: 'stopped' }],
      [130, { kind: 'resumed' }],
      [130, { kind: 'stoppage-explained', stoppage: 't:2', reason: 's', label: '', category: 'set-up' }],
      [220, done()],
    ]);
    const { setUps, earnedMs } = summariseDay('2026-03-02', [plain(turn)], 136_800);
    expect([setUps, earnedMs]).toEqual([1, 136_800 + 90_000]);
  });
});

describe('the bridge to attended time per good part', () => {
  it('adds up for any day that has one', () => {
    fc.assert(
      fc.property(anyTurn(1), anyTurn(100), (one, two) => {
        const bridge = goodPartBridge(summariseDay('2026-03-02', [one, two], null));
        if (!bridge) return;
        const sum = bridge.steps.reduce((total, { ms }) => total + ms, bridge.netMs);
        expect(Math.abs(sum - bridge.perGoodMs)).toBeLessThan(1e-6);
      }),
      { numRuns: 200 },
    );
  });

  it('puts the time of a scrapped part on the good ones', () => {
    const bridge = goodPartBridge(
      summed(
        turnOf([
          [90, done()],
          [180, done()],
          [180, { kind: 'part-judged', partDone: 't:3', outcome: 'scrap' }],
        ]),
      ),
    );
    expect(bridge).toMatchObject({ netMs: 90_000, perGoodMs: 180_000 });
    expect(bridge!.steps.find(({ step }) => step === 'scrap')!.ms).toBe(90_000);
  });
});

describe('a day on which little happened', () => {
  const days = {
    'no turn': summed(),
    'no part': summed(turnOf([[600, { kind: 'turn-ended' }]])),
    'only stoppages': summed(
      turnOf([
        [1, { kind: 'stopped' }],
        [500, { kind: 'resumed' }],
      ]),
    ),
    'all scrapped': summed(
      turnOf([
        [90, done()],
        [90, { kind: 'part-judged', partDone: 't:2', outcome: 'scrap' }],
      ]),
    ),
    'a turn of no length': summed(turnOf([])),
  };

  for (const [name, day] of Object.entries(days)) {
    it(`has no figure that divides by nothing: ${name}`, () => {
      const figures = Object.values(dayFigures(day));
      expect(figures.filter((figure) => figure !== null && !Number.isFinite(figure))).toEqual([]);
      expect(dayFigures(day)).toMatchObject({ perGoodMs: null, mixMs: null, efficiency: null });
      expect(goodPartBridge(day)).toBeNull();
    });
  }

  it('with one part has its figures, and no spread', () => {
    const day = summed(turnOf([[90, done()]]));
    expect(dayFigures(day)).toMatchObject({ netMs: 90_000, perGoodMs: 90_000, efficiency: 1 });
    expect(day.parts[0]!.deviationMs).toBeNull();
  });

  it('tells no efficiency when a good part carried no target: the earned time is not all of it', () => {
    const withdrawn = { ...partM, targetMs: null };
    const day = summed(
      turnOf([
        [90, done()],
        [180, done(withdrawn)],
      ]),
    );
    expect(day.untargeted).toBe(1);
    expect(dayFigures(day)).toMatchObject({ perGoodMs: 90_000, mixMs: null, efficiency: null });
  });

  it('earns by the target that each part carried, also when it changed in mid-day', () => {
    const day = summed(
      turnOf([
        [90, done()],
        [180, done({ ...partM, targetMs: 60_000 })],
      ]),
    );
    expect(day.earnedMs).toBe(150_000);
    expect(day.parts[0]).toMatchObject({ targetMs: 60_000, targetChanged: true });
  });

  it('from two tablets at one station is attended twice, and its parts are in order of time', () => {
    const day = summed(
      turnOf([[180, done({ ...partM, targetMs: 60_000 })]], { beginsAtS: 0 }),
      turnOf([[90, done()]], { sequence: 50 }),
    );
    expect(day).toMatchObject({ attendedMs: 270_000, done: 2, turns: 2 });
    expect(day.parts[0]!.targetMs).toBe(60_000);
  });
});
