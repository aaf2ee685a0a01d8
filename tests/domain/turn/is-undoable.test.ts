import { describe, expect, it } from 'vitest';
import { foldTurn } from '../../../src/domain/turn/fold-turn';
import { turnNow } from '../../../src/domain/turn/turn-now';
import { stampAt } from '../../support/records';
import {
  beforeChange,
  changeAsked,
  cycleIs,
  done,
  judged,
  partL,
  stopped,
  turnRecords,
  undone,
} from './turn-script';

const lines = [
  [80, done()],
  [140, changeAsked(partL)],
  [145, beforeChange(12, 'set-up')],
] as const;

describe('what Undo takes back', () => {
  it('is an answer just given, and only that: the change it was about stays', () => {
    const answered = foldTurn(turnRecords(lines));
    expect(answered.undoable).toEqual({ key: 't:13', kind: 'change-explained', atMs: 145_000 });
    expect(answered.doubts).toEqual([]);
    const back = foldTurn(turnRecords([...lines, [147, undone(13)]]));
    expect(back.inHand.part).toBe(partL.part);
    expect(back.doubts).toMatchObject([{ kind: 'before-change', key: 't:12' }]);
    expect(back.undoable).toEqual({ key: 't:12', kind: 'part-changed', atMs: 140_000 });
  });

  it('is a stop that was said to be in the part before', () => {
    const said = [
      [80, done()],
      [90, cycleIs(11, 'interrupted')],
    ] as const;
    expect(foldTurn(turnRecords(said)).cycles).toMatchObject([{ isCounted: false, judgedAs: 'interrupted' }]);
    expect(foldTurn(turnRecords([...said, [91, undone(12)]])).cycles).toMatchObject([
      { isCounted: true, judgedAs: null },
    ]);
  });

  it('is the mark of the part just done, and not the part', () => {
    const marked = [
      [80, done()],
      [82, judged(11, 'scrap')],
    ] as const;
    expect(foldTurn(turnRecords(marked)).undoable).toEqual({
      key: 't:12',
      kind: 'part-judged',
      atMs: 82_000,
      outcome: 'scrap',
    });
    const back = foldTurn(turnRecords([...marked, [84, undone(12)]]));
    expect(back.cycles).toMatchObject([{ outcome: 'good', netMs: 80_000 }]);
    expect(back.undoable).toEqual({ key: 't:11', kind: 'part-done', atMs: 80_000 });
  });

  it('is the beginning of a rework as a whole, and no mark of a part before the last', () => {
    const why = { kind: 'stoppage-explained', reason: 'rework', label: '', category: 'rework' } as const;
    const begun = foldTurn(
      turnRecords([
        [80, done()],
        [90, stopped],
        [90, { ...why, stoppage: 't:12', ofPart: 't:11' }],
        [90, judged(11, 'rework')],
      ]),
    );
    expect(begun.undoable).toEqual({ key: 't:12', kind: 'stopped', atMs: 90_000 });
    const older = foldTurn(
      turnRecords([
        [80, done()],
        [160, done()],
        [170, judged(11, 'scrap')],
      ]),
    );
    expect(older.undoable).toEqual({ key: 't:12', kind: 'part-done', atMs: 160_000 });
  });

  it('is of the moment of its own tap, whatever was said since', () => {
    const why = { kind: 'stoppage-explained', reason: 'material', label: '', category: 'stoppage' } as const;
    const turn = foldTurn(
      turnRecords([
        [80, done()],
        [90, stopped],
        [1_890, { ...why, stoppage: 't:12' }],
      ]),
    );
    expect(turn.undoable).toEqual({ key: 't:12', kind: 'stopped', atMs: 90_000 });
    expect(turnNow(turn, stampAt(1_892_000)) - turn.undoable!.atMs).toBe(1_802_000);
  });

  it('is nothing that somebody else answered elsewhere', () => {
    const elsewhere = { kind: 'cycle-judged', partDone: 't:11', as: 'interrupted', by: 'F1' } as const;
    expect(
      foldTurn(
        turnRecords([
          [80, done()],
          [90, elsewhere],
        ]),
      ).undoable,
    ).toEqual({
      key: 't:11',
      kind: 'part-done',
      atMs: 80_000,
    });
  });
});
