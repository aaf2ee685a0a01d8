import { describe, expect, it } from 'vitest';
import { foldTurn } from '../../../src/domain/turn/fold-turn';
import { beforeChange, changeAsked, cycleIs, done, partL, turnRecords, undone } from './turn-script';

const lines = [
  [80, done()],
  [140, changeAsked(partL)],
  [145, beforeChange(12, 'set-up')],
] as const;

describe('what Undo takes back', () => {
  it('is an answer just given, and only that: the change it was about stays', () => {
    const answered = foldTurn(turnRecords(lines));
    expect(answered.undoable).toEqual({ key: 't:13', kind: 'change-explained' });
    expect(answered.doubts).toEqual([]);
    const back = foldTurn(turnRecords([...lines, [147, undone(13)]]));
    expect(back.inHand.part).toBe(partL.part);
    expect(back.doubts).toMatchObject([{ kind: 'before-change', key: 't:12' }]);
    expect(back.undoable).toEqual({ key: 't:12', kind: 'part-changed' });
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
    });
  });
});
