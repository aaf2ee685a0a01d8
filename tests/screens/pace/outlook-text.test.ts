import { describe, expect, it } from 'vitest';
import { foldTurn } from '../../../src/domain/turn/fold-turn';
import { projectFinish } from '../../../src/domain/turn/project-finish';
import { outlookText } from '../../../src/screens/pace/outlook-text';
import { done, type Line, turnRecords } from '../../domain/turn/turn-script';
import { stampAt } from '../../support/records';

const wanted = (parts: number): Line => [0, { kind: 'parts-wanted', parts }];
const shiftTo = (seconds: number): Line => [
  0,
  { kind: 'shift-planned', breaks: [], endsWallMs: stampAt(seconds * 1_000).wallMs },
];
/** So many parts of 60 s, and the moment of the last tap. */
function said(count: number, ...more: readonly Line[]): string {
  const parts = Array.from({ length: count }, (_, place): Line => [60 * (place + 1), done()]);
  const turn = foldTurn(turnRecords([...more, ...parts]));
  return outlookText(turn, projectFinish(turn, [], turn.lastAtMs), stampAt(turn.lastAtMs));
}
/** A time of day, so many minutes after the turn began. */
const minutesIn = (minutes: number) =>
  new Date(stampAt(minutes * 60_000).wallMs + stampAt(0).offsetMin * 60_000).toISOString().slice(11, 16);

describe('the line that says where a turn is heading', () => {
  it('says by the end of the shift what there will be, as long as it lies ahead', () => {
    expect(said(12, wanted(40), shiftTo(20 * 60))).toBe(`20 of 40 by ${minutesIn(20)}`);
  });

  it('says past the end of the shift when the parts wanted are done, and nothing of the past', () => {
    expect(said(12, wanted(20), shiftTo(10 * 60))).toBe(`Done at ${minutesIn(20)}`);
    expect(said(12, shiftTo(10 * 60))).toBe('Parts wanted?');
    expect(said(3, shiftTo(60))).toBe('Parts wanted?');
  });

  it('gives a small lot an end from its first part on: at target, and says so', () => {
    // Three of 60 s are done; two more of 90 s end 3 min later.
    expect(said(3, wanted(5))).toBe(`At target: done at ${minutesIn(6)}`);
    expect(said(3, shiftTo(3_600))).toMatch(/^Too early to tell/);
  });
});
