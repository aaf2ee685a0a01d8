import { describe, expect, it } from 'vitest';
import type { TurnFact } from '../../../src/domain/records/turn-fact';
import { foldTurn } from '../../../src/domain/turn/fold-turn';
import { goodSoFar } from '../../../src/domain/turn/good-so-far';
import { reworkMarked } from '../../../src/domain/turn/rework-waiting';
import { done, explained, judged, type Line, resumed, stopped, turnRecords, undone } from './turn-script';

const reworkOf = (stoppage: number, part: number): TurnFact => ({
  kind: 'stoppage-explained',
  stoppage: `t:${stoppage}`,
  reason: 'rework',
  label: '',
  category: 'rework',
  ofPart: `t:${part}`,
});

/** Three parts, of which the first two are marked; then the second is made good. */
const lines: Line[] = [
  [80, done()],
  [160, done()],
  [240, done()],
  [241, judged(11, 'rework')],
  [242, judged(12, 'rework')],
  [250, stopped],
  [250, reworkOf(16, 12)],
];

function found(more: readonly Line[] = []) {
  const { marked, waiting } = reworkMarked(foldTurn(turnRecords([...lines, ...more])));
  return { marked: marked.map(({ key }) => key), waiting: waiting.map(({ key }) => key) };
}

describe('parts marked for rework', () => {
  it('wait until a rework of just that part is begun, and are marked all the same afterwards', () => {
    expect(found()).toEqual({ marked: ['t:11', 't:12'], waiting: ['t:11'] });
    expect(found([[300, resumed]])).toEqual({ marked: ['t:11', 't:12'], waiting: ['t:11'] });
  });

  it('wait again when the rework is taken back, or when the stop is put down to something else', () => {
    expect(found([[252, undone(16)]]).waiting).toEqual(['t:11', 't:12']);
    expect(
      found([
        [300, resumed],
        [301, explained(16, 'material', 'stoppage')],
      ]).waiting,
    ).toEqual(['t:11', 't:12']);
  });

  it('are no good parts so far while they wait, and are once their rework has begun', () => {
    const good = (more: readonly Line[] = []) => goodSoFar(foldTurn(turnRecords([...lines, ...more])));
    // Three were made: one waits, one is being made good, one was good.
    expect(good()).toBe(2);
    expect(good([[252, undone(16)]])).toBe(1);
    expect(good([[300, judged(11, 'good')]])).toBe(3);
    expect(good([[300, judged(11, 'scrap')]])).toBe(2);
  });

  it('wait no more once they are called good or scrap', () => {
    expect(found([[300, judged(11, 'scrap')]])).toEqual({ marked: ['t:12'], waiting: [] });
    expect(found([[300, judged(11, 'good')]])).toEqual({ marked: ['t:12'], waiting: [] });
  });
});
