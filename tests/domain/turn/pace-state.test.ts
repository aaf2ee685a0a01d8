import { describe, expect, it } from 'vitest';
import { cleanCycles } from '../../../src/domain/turn/clean-cycles';
import { foldTurn } from '../../../src/domain/turn/fold-turn';
import { paceRatio } from '../../../src/domain/turn/pace-ratio';
import { paceState } from '../../../src/domain/turn/pace-state';
import { change, done, type Line, partL, partM, turnRecords } from './turn-script';

/** M, 90 s each, done one after the other in these multiples of its target. */
function turnOf(ratios: readonly number[], more: readonly Line[] = []) {
  let seconds = 0;
  const lines = ratios.map((ratio): Line => {
    seconds += 90 * ratio;
    return [seconds, done()];
  });
  return foldTurn(turnRecords([...more, ...lines]));
}
const steady = [1, 0.98, 1.02, 1, 1, 1];

describe('the state of the pace', () => {
  it('is not told before five parts', () => {
    expect(paceState(turnOf([3, 3, 3, 3]))).toBeNull();
    expect(paceState(turnOf([1, 1, 1, 1, 1]))).toBe('steady');
  });

  it('is left as it was by one part of three times its target', () => {
    expect(paceState(turnOf([...steady, 3, 1]))).toBe('steady');
    expect(paceState(turnOf([...steady, 3]))).toBe('steady');
  });

  it('turns with five parts at 1.12, and not with five at 1.09', () => {
    expect(paceState(turnOf([...steady, 1.12, 1.12, 1.12, 1.12, 1.12]))).toBe('slower');
    expect(paceState(turnOf([...steady, 1.09, 1.09, 1.09, 1.09, 1.09]))).toBe('steady');
  });

  it('turns back at 1.05 and no sooner, so that it does not flicker', () => {
    const slower = [...steady, 1.2, 1.2, 1.2, 1.2, 1.2];
    expect(paceState(turnOf([...slower, 1.07, 1.07, 1.07, 1.07, 1.07]))).toBe('slower');
    expect(paceState(turnOf([...slower, 1.04, 1.04, 1.04, 1.04, 1.04]))).toBe('steady');
  });

  it('is the same at 130 % of the pace as at 100 %: nothing is praised', () => {
    const quick = Array(12).fill(1 / 1.3);
    expect(paceState(turnOf(quick))).toBe(paceState(turnOf(Array(12).fill(1))));
  });

  it('is not told of somebody who learns', () => {
    const learns: Line = [0, { kind: 'learning-noted', person: 'K7', parts: 100 }];
    expect(paceState(turnOf(Array(12).fill(1.5), [learns]))).toBeNull();
  });
});

describe('the ratio of the pace', () => {
  it('is one of sums: a long part weighs as much as it is long', () => {
    // M in 180 of 90 s, L in 75 of 150 s: 255 ÷ 240 = 1.0625; the mean of 2 and 0.5 would be 1.25.
    const turn = foldTurn(
      turnRecords([
        [180, done()],
        [180, change(partL)],
        [255, done(partL)],
      ]),
    );
    expect(paceRatio(cleanCycles(turn))).toBeCloseTo(1.0625, 12);
  });

  it('looks back over ten parts, and is none before the first', () => {
    const turn = turnOf([9, ...Array(10).fill(1.1)], []);
    expect(paceRatio(cleanCycles(turn))).toBeCloseTo(1.1, 12);
    expect(paceRatio([])).toBeNull();
    expect(cleanCycles(foldTurn(turnRecords([[90, done({ ...partM, targetMs: null })]])))).toEqual([]);
  });
});
