import { describe, expect, it } from 'vitest';
import type { TurnFact } from '../../../src/domain/records/turn-fact';
import { elementMeans } from '../../../src/domain/turn/element-means';
import { foldTurn } from '../../../src/domain/turn/fold-turn';
import { ledgerTotals } from '../../../src/domain/turn/ledger-totals';
import { pace } from '../../../src/domain/turn/pace';
import { stampAt } from '../../support/records';
import { cycleIs, done, ended, type Line, partM, resumed, stopped, turnRecords, undone } from './turn-script';

const begun: TurnFact = { kind: 'part-begun' };
const element = (name: string): TurnFact => ({ kind: 'element-done', element: name });

describe('a part whose start and end are tapped', () => {
  const touched = { ...partM, tapping: 'start-stop' as const };
  const fold = (lines: readonly Line[]) => foldTurn(turnRecords(lines, touched));

  it('takes the time that hands were on it, and what lies between two parts is nobody’s cycle', () => {
    // Hands on from 10 to 70 s and from 100 to 150 s: 60 s and 50 s; 10 s and 30 s between.
    const turn = fold([
      [10, begun],
      [70, done()],
      [100, begun],
      [150, done()],
    ]);
    expect(turn.cycles.map(({ netMs }) => netMs)).toEqual([60_000, 50_000]);
    expect(ledgerTotals(turn.ledger)).toMatchObject({ cycle: 110_000, unaccounted: 40_000 });
  });

  it('has no time and costs no position before it is begun', () => {
    const turn = fold([
      [10, begun],
      [90, done()],
    ]);
    // 80 of 90 s: 10 s ahead; ten minutes of waiting for the next part change nothing.
    expect(turn.isPartBegun).toBe(false);
    expect(pace(turn, stampAt(690_000))).toMatchObject({ partElapsedMs: 0, aheadMs: 10_000 });
  });

  it('is begun once: the bounce of the tap that ended the part before begins nothing', () => {
    expect(
      fold([
        [10, begun],
        [70, done()],
        [70.2, begun],
      ]).isPartBegun,
    ).toBe(false);
    const twice = fold([
      [10, begun],
      [30, begun],
      [70, done()],
    ]);
    expect(twice.cycles[0]!.netMs).toBe(60_000);
  });

  it('goes on with the next begin where its end was none, and what lies between is nobody’s cycle', () => {
    const wasNone: TurnFact = { kind: 'tap-left-out', tap: 't:12', by: 'F1' };
    // Hands on from 1 to 90 s and from 500 to 590 s.
    const turn = fold([
      [1, begun],
      [90, done()],
      [500, begun],
      [590, done()],
      [600, ended],
      [700, wasNone],
    ]);
    expect(turn.cycles.map(({ netMs }) => netMs)).toEqual([179_000]);
    expect(ledgerTotals(turn.ledger)).toMatchObject({ cycle: 179_000, unaccounted: 421_000 });
    const going = fold([
      [1, begun],
      [90, done()],
      [500, begun],
      [501, wasNone],
    ]);
    expect(pace(going, stampAt(510_000)).partElapsedMs).toBe(99_000);
  });

  it('costs no idle time either where a stop lies between the end that was none and the next begin', () => {
    const wasNone: TurnFact = { kind: 'tap-left-out', tap: 't:12' };
    const idle = (stop: readonly Line[]) =>
      fold([[5, begun], [35, done()], ...stop, [120, begun], [150, done()], [160, ended], [161, wasNone]]);
    const turn = idle([
      [95, stopped],
      [100, resumed],
    ]);
    expect(turn.cycles.map(({ netMs }) => netMs)).toEqual([60_000]);
    expect(ledgerTotals(turn.ledger)).toMatchObject({ cycle: 60_000, stoppage: 5_000, unaccounted: 95_000 });
    expect(turn.ledger.filter(({ fromMs, toMs }) => toMs <= fromMs)).toEqual([]);
    expect(idle([[95, stopped]]).cycles.map(({ netMs }) => netMs)).toEqual([60_000]);
  });

  it('has no cycle behind it in a turn that goes on, or was left open', () => {
    const turn = fold([
      [1, begun],
      [90, done()],
      [500, stopped],
      [600, resumed],
    ]);
    expect(ledgerTotals(turn.ledger)).toMatchObject({
      cycle: 89_000,
      stoppage: 100_000,
      unaccounted: 411_000,
    });
  });

  it('is asked about when its end comes in the moment of its start', () => {
    const turn = fold([
      [10, begun],
      [10.4, done()],
      [70, done()],
    ]);
    expect(turn.doubts.map(({ kind }) => kind)).toEqual(['second-tap']);
    expect(turn.cycles.map(({ netMs }) => netMs)).toEqual([60_000]);
  });

  it('can have its start taken back', () => {
    const turn = fold([
      [10, begun],
      [20, undone(11)],
      [30, begun],
      [70, done()],
    ]);
    expect(turn.cycles.map(({ netMs }) => netMs)).toEqual([40_000]);
    expect(fold([[10, begun]]).undoable).toMatchObject({ key: 't:11', kind: 'part-begun' });
  });

  it('may be stopped in the middle, and the ledger still has every millisecond once', () => {
    const turn = fold([
      [10, begun],
      [30, stopped],
      [50, resumed],
      [90, done()],
      [120, ended],
    ]);
    expect(turn.cycles.map(({ netMs }) => netMs)).toEqual([60_000]);
    const totals = ledgerTotals(turn.ledger);
    expect(Object.values(totals).reduce((sum, ms) => sum + ms, 0)).toBe(120_000);
    expect(totals).toMatchObject({ cycle: 60_000, stoppage: 20_000, unaccounted: 40_000 });
  });
});

describe('a part whose elements are tapped', () => {
  const elements = ['load', 'bore', 'unload'];
  const byElement = { ...partM, tapping: 'elements' as const, elements };
  const fold = (lines: readonly Line[]) => foldTurn(turnRecords(lines, byElement));
  const part = (from: number): Line[] => [
    [from + 20, element('load')],
    [from + 60, element('bore')],
    [from + 80, done()],
  ];

  it('is one cycle, and its elements are what lies between the taps', () => {
    const turn = fold([...part(0), ...part(80)]);
    expect(turn.cycles.map(({ netMs }) => netMs)).toEqual([80_000, 80_000]);
    expect(elementMeans(turn)).toEqual([
      { element: 'load', n: 2, meanMs: 20_000 },
      { element: 'bore', n: 2, meanMs: 40_000 },
      { element: 'unload', n: 2, meanMs: 20_000 },
    ]);
  });

  it('leaves a stoppage out of the element in which it fell', () => {
    // 30 s of stoppage inside bore: 20 → 90 s holds 40 s of work.
    const turn = fold([
      [20, element('load')],
      [40, stopped],
      [70, resumed],
      [90, element('bore')],
      [110, done()],
    ]);
    expect(elementMeans(turn).map(({ meanMs }) => meanMs)).toEqual([20_000, 40_000, 20_000]);
  });

  it('goes into no element’s mean when a tap was missed, and into the part’s all the same', () => {
    const turn = fold([...part(0), [100, element('load')], [160, done()]]);
    expect(turn.cycles.map(({ isCounted }) => isCounted)).toEqual([true, true]);
    expect(elementMeans(turn).map(({ n }) => n)).toEqual([1, 1, 1]);
  });

  it('knows which element is in hand; a bounce ends none', () => {
    expect(fold([[20, element('load')]]).stepsDone).toBe(1);
    expect(
      fold([
        [20, element('load')],
        [20.1, element('bore')],
      ]).stepsDone,
    ).toBe(1);
    expect(fold(part(0)).stepsDone).toBe(0);
  });
});

describe('a first-off piece', () => {
  it('is a part done, its time is set-up, and it is in no mean and no position', () => {
    const turn = foldTurn(
      turnRecords([
        [300, done()],
        [310, cycleIs(11, 'first-off')],
        [390, done()],
      ]),
    );
    expect(turn.cycles.map(({ netMs, isCounted }) => [netMs, isCounted])).toEqual([
      [300_000, false],
      [90_000, true],
    ]);
    expect(ledgerTotals(turn.ledger)).toMatchObject({ 'set-up': 300_000, cycle: 90_000 });
    // The second took 90 of 90 s: level, whatever the first one took.
    expect(pace(turn, stampAt(390_000)).aheadMs).toBe(0);
  });
});
