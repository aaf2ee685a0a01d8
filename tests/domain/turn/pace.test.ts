import { describe, expect, it } from 'vitest';
import { foldTurn } from '../../../src/domain/turn/fold-turn';
import { pace } from '../../../src/domain/turn/pace';
import { stampAt } from '../../support/records';
import {
  change,
  cycleIs,
  done,
  ended,
  explained,
  judged,
  type Line,
  partL,
  partM,
  partN,
  resumed,
  stopped,
  turnRecords,
} from './turn-script';

const at = (seconds: number, lines: readonly Line[], inHand = partM) =>
  pace(foldTurn(turnRecords(lines, inHand)), stampAt(seconds * 1_000));

describe('pace', () => {
  it('counts ahead what the parts done were allowed more than they took', () => {
    // Two M at 90 s each, done at 80 s and 165 s: 180 − 165 = 15 s ahead; the third has run 20 s of its 90.
    expect(
      at(185, [
        [80, done()],
        [165, done()],
      ]),
    ).toMatchObject({ partElapsedMs: 20_000, aheadMs: 15_000, planAheadMs: 15_000 });
  });

  it('leaves the part in hand out until it has passed its own target, and then counts what is beyond it', () => {
    const lines: Line[] = [[90, done()]];
    // 90 s allowed, 90 s taken: level. At 180 s the second has run exactly its 90 s; at 200 s it is 20 s over.
    expect(at(180, lines).aheadMs).toBe(0);
    expect(at(200, lines).aheadMs).toBe(-20_000);
  });

  it('counts minutes, not pieces: large parts at their target are no delay', () => {
    // M in 90 s of 90, then two L in 150 s of 150: level after three parts, in 390 s.
    const lines: Line[] = [
      [90, done()],
      [90, change(partL)],
      [240, done(partL)],
      [390, done(partL)],
    ];
    expect(at(390, lines)).toMatchObject({ aheadMs: 0, partsAhead: 0 });
  });

  it('says the position in parts of the kind in hand', () => {
    // 45 s ahead on M, then L is in hand: 45 ÷ 150 = 0.3 parts. With M still in hand it is 45 ÷ 90 = 0.5.
    expect(at(45, [[45, done()]]).partsAhead).toBeCloseTo(0.5, 12);
    expect(
      at(45, [
        [45, done()],
        [45, change(partL)],
      ]).partsAhead,
    ).toBeCloseTo(0.3, 12);
  });

  it('lets a stoppage cost the plan and not the pace', () => {
    // One M: 0 → 110 s with 30 → 60 s stopped. Net 80 s of 90 allowed: pace 10 s ahead; plan 10 − 30 = −20 s.
    const lines: Line[] = [
      [30, stopped],
      [60, resumed],
      [110, done()],
    ];
    expect(at(110, lines)).toMatchObject({ aheadMs: 10_000, planAheadMs: -20_000 });
  });

  it('lets a stop that was said of a part afterwards cost the plan and not the pace', () => {
    // M in 80 s, then in 210 s with a forgotten stop: pace 90 − 80 = 10 s ahead; plan 2 × 90 − 290 = −110 s.
    const lines: Line[] = [
      [80, done()],
      [290, done()],
    ];
    expect(at(290, lines)).toMatchObject({ aheadMs: -110_000, planAheadMs: -110_000 });
    expect(at(291, [...lines, [291, cycleIs(12, 'interrupted')]])).toMatchObject({
      aheadMs: 10_000,
      planAheadMs: -110_000,
    });
  });

  it('lets a planned break cost neither', () => {
    const lines: Line[] = [
      [30, stopped],
      [60, resumed],
      [61, explained(11, 'break', 'planned-break')],
      [110, done()],
    ];
    expect(at(110, lines)).toMatchObject({ aheadMs: 10_000, planAheadMs: 10_000 });
  });

  it('stands still for the part while it is stopped, and the stop clock runs', () => {
    // Stopped at 40 s, read at 100 s: the part has had 40 s, the stoppage has lasted 60 s.
    const lines: Line[] = [[40, stopped]];
    expect(at(100, lines)).toMatchObject({
      partElapsedMs: 40_000,
      stoppedForMs: 60_000,
      turnElapsedMs: 100_000,
      aheadMs: 0,
      planAheadMs: -60_000,
    });
  });

  it('lets a scrapped part take its time and earn no target; a reworked one earns it once', () => {
    const lines: Line[] = [
      [80, done()],
      [160, done()],
    ];
    // Good: 180 − 160 = 20 s ahead. One scrapped: 90 − 160 = 70 s behind. One reworked: as good.
    expect(at(160, lines).aheadMs).toBe(20_000);
    expect(at(160, [...lines, [160, judged(12, 'scrap')]]).aheadMs).toBe(-70_000);
    expect(at(160, [...lines, [160, judged(12, 'rework')]]).aheadMs).toBe(20_000);
  });

  it('invents no position for a part without a target', () => {
    expect(at(300, [[200, done(partN)]], partN)).toMatchObject({
      aheadMs: null,
      planAheadMs: null,
      partsAhead: null,
    });
  });

  it('leaves parts without a target out on both sides when they are mixed with others', () => {
    // M in 80 of 90 s: 10 s ahead. N took 200 s without a target and changes nothing; in hand, it has no pieces.
    expect(
      at(290, [
        [80, done()],
        [80, change(partN)],
        [280, done(partN)],
      ]),
    ).toMatchObject({ aheadMs: 10_000, partsAhead: null });
  });

  it('stands still after the end, however late it is read', () => {
    const lines: Line[] = [
      [80, done()],
      [300, ended],
    ];
    expect(at(9_000, lines)).toMatchObject({ aheadMs: 10_000, turnElapsedMs: 300_000, stoppedForMs: null });
  });

  it('goes on by the wall clock in another run of the page', () => {
    // 30 s on the last tap, then a reload: the wall clock says 75 s later, the new monotonic clock says 2 s.
    const turn = foldTurn(turnRecords([[30, done()]]));
    expect(pace(turn, stampAt(105_000, { run: 'run-2', monoMs: 2_000 })).partElapsedMs).toBe(75_000);
  });

  it('shows zero, and nothing negative, to a reading older than the last tap', () => {
    expect(at(70, [[80, done()]]).partElapsedMs).toBe(0);
  });
});
