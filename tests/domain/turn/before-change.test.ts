import { describe, expect, it } from 'vitest';
import type { BeforeChange } from '../../../src/domain/records/turn-fact';
import { correctionHistory } from '../../../src/domain/turn/correction-history';
import { foldTurn } from '../../../src/domain/turn/fold-turn';
import { ledgerTotals } from '../../../src/domain/turn/ledger-totals';
import { pace } from '../../../src/domain/turn/pace';
import { stampAt } from '../../support/records';
import {
  beforeChange,
  change,
  changeAsked,
  done,
  judged,
  type Line,
  partL,
  partM,
  resumed,
  stopped,
  turnRecords,
  undone,
} from './turn-script';

/** M done at 80 s, changed to L at 200 s (record t:12), L done at 340 s: 120 s lie before the change. */
const lines: readonly Line[] = [
  [80, done()],
  [200, changeAsked(partL)],
  [340, done(partL)],
];
const said = (as: BeforeChange, ...more: readonly Line[]) =>
  foldTurn(turnRecords([...lines, [340, beforeChange(12, as)], ...more]));
const made = ({ cycles }: ReturnType<typeof foldTurn>) =>
  cycles.map(({ partCode, netMs }) => [partCode, netMs]);

describe('the time between the last part and a change of part', () => {
  it('is nobody’s until somebody says what it was, and is asked about', () => {
    const turn = foldTurn(turnRecords(lines));
    expect(made(turn)).toEqual([
      ['M', 80_000],
      ['L', 140_000],
    ]);
    expect(ledgerTotals(turn.ledger)).toMatchObject({ cycle: 220_000, unaccounted: 120_000 });
    expect(turn.doubts).toMatchObject([
      { kind: 'before-change', key: 't:12', fromMs: 80_000, toMs: 200_000, suggestion: { to: partL } },
    ]);
  });

  it('is asked about without what was stopped in it: of that it was said what it was', () => {
    const turn = foldTurn(
      turnRecords([
        [80, done()],
        [92, stopped],
        [94.4, changeAsked(partL)],
      ]),
    );
    expect(turn.doubts).toMatchObject([{ fromMs: 80_000, toMs: 94_400, suggestion: { workedMs: 12_000 } }]);
  });

  it('is set-up when somebody says so, and in no part', () => {
    const turn = said('set-up');
    expect(ledgerTotals(turn.ledger)).toMatchObject({ 'set-up': 120_000, cycle: 220_000, unaccounted: 0 });
    expect(turn.ledger).toContainEqual({
      category: 'set-up',
      reason: 'set-up',
      label: '',
      fromMs: 80_000,
      toMs: 200_000,
    });
    expect(turn.doubts).toEqual([]);
  });

  it('is the beginning of the next part when somebody says so', () => {
    expect(made(said('next-part'))).toEqual([
      ['M', 80_000],
      ['L', 260_000],
    ]);
  });

  it('is one more of the part before when its tap was missed, and can be judged like any part', () => {
    const turn = said('part-before', [340, judged(12, 'scrap')]);
    expect(made(turn)).toEqual([
      ['M', 80_000],
      ['M', 120_000],
      ['L', 140_000],
    ]);
    expect(turn.cycles[1]).toMatchObject({ key: 't:12', outcome: 'scrap', targetMs: partM.targetMs });
  });

  it('stays unaccounted when it is left out, and nobody is asked again', () => {
    const turn = said('left-out');
    expect(ledgerTotals(turn.ledger)).toMatchObject({ unaccounted: 120_000 });
    expect(turn.doubts).toEqual([]);
  });

  it('begins the clock of the next part anew', () => {
    const records = turnRecords(lines.slice(0, 2));
    expect(pace(foldTurn(records), stampAt(230_000)).partElapsedMs).toBe(30_000);
  });

  it('is the next part’s without a question below ten seconds, and where the same part is chosen again', () => {
    const quick = foldTurn(
      turnRecords([
        [80, done()],
        [89, changeAsked(partL)],
        [200, done(partL)],
      ]),
    );
    expect(made(quick)).toEqual([
      ['M', 80_000],
      ['L', 120_000],
    ]);
    expect(quick.doubts).toEqual([]);
    const same = foldTurn(turnRecords([[60, changeAsked({ ...partM, targetMs: 60_000 })]]));
    expect(same).toMatchObject({ doubts: [], inHand: { targetMs: 60_000 }, partBeganAtMs: 0 });
  });

  it('is the next part’s in records that never asked', () => {
    const old = foldTurn(
      turnRecords([
        [80, done()],
        [200, change(partL)],
        [340, done(partL)],
        [350, beforeChange(12, 'set-up')],
      ]),
    );
    expect(made(old)).toEqual([
      ['M', 80_000],
      ['L', 260_000],
    ]);
  });

  it('leaves a stoppage that began before the change where it is, on both sides of it', () => {
    // Worked 0 → 30 s, stopped 30 → 150 s, changed at 100 s, L done at 200 s: L worked 150 → 200 s.
    const turn = foldTurn(
      turnRecords([
        [30, stopped],
        [100, changeAsked(partL)],
        [150, resumed],
        [200, done(partL)],
      ]),
    );
    expect(made(turn)).toEqual([['L', 50_000]]);
    expect(ledgerTotals(turn.ledger)).toMatchObject({
      unaccounted: 30_000,
      stoppage: 120_000,
      cycle: 50_000,
    });
    expect(turn.stoppages).toMatchObject([{ fromMs: 30_000, toMs: 150_000 }]);
    const during = foldTurn(
      turnRecords([
        [30, stopped],
        [100, changeAsked(partL)],
        [150, resumed],
      ]),
    );
    expect(pace(during, stampAt(160_000)).partElapsedMs).toBe(10_000);
  });

  it('goes back to the part in hand when the change is taken back', () => {
    const turn = foldTurn(
      turnRecords([
        [80, done()],
        [200, changeAsked(partL)],
        [205, undone(12)],
        [230, done()],
      ]),
    );
    expect(made(turn)).toEqual([
      ['M', 80_000],
      ['M', 150_000],
    ]);
    expect(turn.doubts).toEqual([]);
  });

  it('is told in the history with what it was before the answer and after it', () => {
    const [answer] = correctionHistory(turnRecords([...lines, [350, beforeChange(12, 'set-up')]]));
    expect(answer).toMatchObject({
      kind: 'change-explained',
      before: { what: 'time', spans: [{ category: 'unaccounted', fromMs: 80_000, toMs: 200_000 }] },
      after: { what: 'time', spans: [{ category: 'set-up', fromMs: 80_000, toMs: 200_000 }] },
    });
  });
});
