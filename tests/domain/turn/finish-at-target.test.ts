import { describe, expect, it } from 'vitest';
import type { TurnFact } from '../../../src/domain/records/turn-fact';
import { finishAtTarget } from '../../../src/domain/turn/finish-at-target';
import { foldTurn } from '../../../src/domain/turn/fold-turn';
import { stampAt } from '../../support/records';
import { change, done, judged, type Line, partL, partN, resumed, stopped, turnRecords } from './turn-script';

const wanted = (parts: number): TurnFact => ({ kind: 'parts-wanted', parts });
/** Target of M: 90 s. Parts are done at 80 s and 200 s; five are wanted. */
const lines: Line[] = [
  [0, wanted(5)],
  [80, done()],
  [200, done()],
];
const at = (seconds: number, ...more: readonly Line[]) =>
  finishAtTarget(foldTurn(turnRecords([...lines, ...more])), stampAt(seconds * 1_000));

describe('when the parts wanted would be done at target', () => {
  it('is what is left at its target, from the last tap on', () => {
    expect(at(200)).toBe(470_000);
    // 30 s into the third of them nothing has changed …
    expect(at(230)).toBe(470_000);
    // … and 110 s into it, it is 20 s late.
    expect(at(310)).toBe(490_000);
  });

  it('counts scrap as still to be made, and time that work stands still', () => {
    expect(at(200, [200, judged(13, 'scrap')])).toBe(560_000);
    expect(at(260, [210, stopped])).toBe(520_000);
    expect(at(260, [210, stopped], [250, resumed])).toBe(510_000);
  });

  it('has the target of the part in hand', () => {
    expect(at(200, [200, change(partL)])).toBe(650_000);
  });

  it('leaves out planned breaks', () => {
    const wall = (seconds: number) => stampAt(seconds * 1_000).wallMs;
    const breaks = [{ fromWallMs: wall(300), toWallMs: wall(900) }];
    expect(at(200, [200, { kind: 'shift-planned', breaks, endsWallMs: null }])).toBe(1_070_000);
  });

  it('is nothing without a target, without a number, and when all are done', () => {
    expect(at(200, [200, change(partN)])).toBeNull();
    expect(at(200, [200, { kind: 'parts-wanted', parts: null }])).toBeNull();
    expect(at(200, [200, wanted(2)])).toBeNull();
  });
});
