import { describe, expect, it } from 'vitest';
import { absorbedTime } from '../../../src/domain/day/absorbed-time';
import { addedUp } from '../../../src/domain/day/lost-cost';
import { summariseDay } from '../../../src/domain/day/summarise-day';
import type { TurnFact } from '../../../src/domain/records/turn-fact';
import { recordAt } from '../../support/records';
import { done, turnOf } from './turn-of-day';

const explained = (stoppage: string, reason: string): TurnFact => ({
  kind: 'stoppage-explained',
  stoppage,
  reason,
  label: '',
  category: 'stoppage',
});

/** Material for 100 s, nobody knows for 200 s, a machine for 60 s. */
const turn = turnOf([
  [90, done()],
  [100, { kind: 'stopped' }],
  [200, { kind: 'resumed' }],
  [200, explained('t:3', 'material')],
  [300, { kind: 'stopped' }],
  [500, { kind: 'resumed' }],
  [510, { kind: 'stopped' }],
  [570, { kind: 'resumed' }],
  [570, explained('t:8', 'machine')],
  [600, done()],
]);

const lost = (absorbedMs: ReadonlyMap<string, number>) =>
  summariseDay('2026-03-02', [{ turn, absorbedMs, breaks: [] }], null).lost.map(
    ({ reason, lostMs, costMs }) => `${reason} ${lostMs / 1_000} ${costMs / 1_000}`,
  );

describe('what lost time cost', () => {
  it('is its whole length as long as nobody said otherwise, and what nobody explained stands last', () => {
    expect(lost(new Map())).toEqual(['material 100 100', 'machine 60 60', 'not-stated 200 200']);
  });

  it('leaves out what was absorbed, and is in the order of what it cost', () => {
    expect(lost(new Map([['t:3', 75_000]]))).toEqual([
      'machine 60 60',
      'material 100 25',
      'not-stated 200 200',
    ]);
  });

  it('is never below nothing', () => {
    expect(lost(new Map([['t:3', 1e9]]))[1]).toBe('material 100 0');
  });

  it('follows what was said last about a stoppage', () => {
    const said = (sequence: number, absorbedMs: number) =>
      recordAt(sequence, 0, 't:1', { kind: 'stoppage-absorbed', stoppage: 't:3', absorbedMs });
    expect(absorbedTime([said(1, 75_000), said(2, 0)]).get('t:3')).toBe(0);
  });

  it('of several days adds up, in the order of the whole', () => {
    const day = summariseDay('2026-03-02', [{ turn, absorbedMs: new Map(), breaks: [] }], null);
    const cheap = summariseDay(
      '2026-03-03',
      [{ turn, absorbedMs: new Map([['t:3', 90_000]]), breaks: [] }],
      null,
    );
    expect(addedUp([cheap, day, cheap]).map(({ reason, count, costMs }) => [reason, count, costMs])).toEqual([
      ['machine', 3, 180_000],
      ['material', 3, 120_000],
      ['not-stated', 3, 600_000],
    ]);
  });
});
