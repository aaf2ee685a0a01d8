import { describe, expect, it } from 'vitest';
import { foldTurn } from '../../../src/domain/turn/fold-turn';
import { clockAt, readStretch } from '../../../src/screens/settle/stretch-fields';
import { done, ended, resumed, stopped, turnRecords } from '../../domain/turn/turn-script';

const turn = foldTurn(
  turnRecords([
    [80.2, done()],
    [100.3, stopped],
    [113.4, resumed],
    [160, done()],
    [180, ended],
  ]),
);
const at = (seconds: number) => clockAt(turn, seconds * 1_000);

describe('a stretch of time as it is typed', () => {
  it('is the whole of a stop that begins and ends in those seconds, and leaves no rest of it', () => {
    expect(readStretch(turn, at(100), at(113))).toEqual({ fromMs: 100_300, toMs: 113_400 });
  });

  it('is what was typed where nothing begins or ends', () => {
    expect(readStretch(turn, at(90), at(95))).toEqual({ fromMs: 90_000, toMs: 95_000 });
  });

  it('is none without both times, and none backwards or beside the turn', () => {
    expect(readStretch(turn, '', '')).toBeNull();
    expect(readStretch(turn, at(95), at(90))).toBeNull();
    expect(readStretch(turn, at(90), at(181))).toBeNull();
  });
});
