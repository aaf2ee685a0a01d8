import { describe, expect, it } from 'vitest';
import { foldTurn } from '../../../src/domain/turn/fold-turn';
import { leftOut } from '../../../src/domain/turn/left-out';
import { cycleIs, done, explained, type Line, resumed, stopped, turnRecords } from './turn-script';

const reasons = (lines: readonly Line[]) => foldTurn(turnRecords(lines)).cycles.map(leftOut);
const steady: Line[] = Array.from({ length: 5 }, (_, place) => [80 * (place + 1), done()] as const);

describe('why a part is in no average', () => {
  it('is nothing for one that is in it', () => {
    expect(reasons(steady)).toEqual([null, null, null, null, null]);
  });

  it('is the stop that somebody says was in it, whatever was asked before', () => {
    const long: Line[] = [...steady, [800, done()]];
    expect(reasons(long).at(-1)).toBe('long-part');
    expect(reasons([...long, [801, cycleIs(16, 'interrupted')]]).at(-1)).toBe('interrupted');
    expect(reasons([...long, [801, cycleIs(16, 'one-part')]]).at(-1)).toBeNull();
    expect(reasons([...steady, [401, cycleIs(15, 'interrupted')]])).toEqual([
      null,
      null,
      null,
      null,
      'interrupted',
    ]);
  });

  it('is that it was made to be checked, or that stops left no time of it', () => {
    expect(reasons([...steady, [401, cycleIs(11, 'first-off')]])[0]).toBe('first-off');
    const stood: Line[] = [
      [80, done()],
      [80, stopped],
      [200, resumed],
      [200, explained(12, 'material', 'stoppage')],
      [201, done()],
    ];
    expect(reasons(stood)).toEqual([null, 'no-time-left']);
  });

  it('is the cause with which it was set aside, before everything else', () => {
    const aside = { kind: 'part-set-aside', partDone: 't:11', cause: 'trial', by: 'F1' } as const;
    expect(reasons([...steady, [401, cycleIs(11, 'interrupted')], [402, aside]])[0]).toBe('set-aside');
  });
});
