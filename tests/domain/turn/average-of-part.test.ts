import { describe, expect, it } from 'vitest';
import { averageOfPart } from '../../../src/domain/turn/average-of-part';
import { foldTurn } from '../../../src/domain/turn/fold-turn';
import { change, done, partL, resumed, stopped, turnRecords } from './turn-script';

describe('averageOfPart', () => {
  it('averages the part in question alone, without what was stopped', () => {
    // M in 80 s, L in 150 s, then M in 130 s of which 30 s stood still: (80 + 100) / 2 = 90 s over 2.
    const turn = foldTurn(
      turnRecords([
        [80, done()],
        [80, change(partL)],
        [230, done(partL)],
        [250, stopped],
        [280, resumed],
        [360, done()],
      ]),
    );
    expect(averageOfPart(turn, 't:1')).toEqual({ n: 2, done: 2, meanMs: 90_000 });
  });

  it('is null before the first of that part, and never zero', () => {
    expect(averageOfPart(foldTurn(turnRecords([[80, done()]])), 't:2')).toBeNull();
  });
});
