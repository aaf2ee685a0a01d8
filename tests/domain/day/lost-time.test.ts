import { describe, expect, it } from 'vitest';
import { lostTime } from '../../../src/domain/day/lost-time';
import { reviewDay } from '../../../src/domain/day/review-day';
import type { StopReason } from '../../../src/domain/records/shop-fact';
import type { TurnFact } from '../../../src/domain/records/turn-fact';
import { turnOf } from './turn-of-day';

const reason = (id: string, category: StopReason['category'] = 'stoppage', label = ''): StopReason => ({
  id,
  label,
  category,
});

/** A turn of stoppages, each so many seconds long, a second apart; null is never explained. */
function turnWithStops(
  stops: readonly (readonly [seconds: number, why: StopReason | null])[],
  beginsAtS = 0,
) {
  const happened: [number, TurnFact][] = [];
  let atS = 0;
  for (const [seconds, why] of stops) {
    // The turn's start is record 1.
    const stoppage = `t:${happened.length + 2}`;
    happened.push([atS + 1, { kind: 'stopped' }]);
    atS += 1 + seconds;
    happened.push([atS, { kind: 'resumed' }]);
    if (why) {
      const { id, label, category } = why;
      happened.push([atS, { kind: 'stoppage-explained', stoppage, reason: id, label, category }]);
    }
  }
  return turnOf(happened, { beginsAtS });
}

describe('lostTime', () => {
  it('adds the time of each reason up, longest first, and keeps what nobody explained last', () => {
    // Not stated 500 s is the longest and still last; material 60 + 30 = 90 s twice; machine 70 s once.
    const turn = turnWithStops([
      [60, reason('material')],
      [500, null],
      [70, reason('machine')],
      [30, reason('material')],
    ]);
    expect(lostTime([turn])).toEqual([
      { reason: 'material', label: '', count: 2, lostMs: 90_000, seconds: 90 },
      { reason: 'machine', label: '', count: 1, lostMs: 70_000, seconds: 70 },
      { reason: 'not-stated', label: '', count: 1, lostMs: 500_000, seconds: 500 },
    ]);
  });

  it('leaves set-up and planned breaks out, and keeps rework and being called away', () => {
    const turn = turnWithStops([
      [600, reason('break', 'planned-break')],
      [20, reason('set-up', 'set-up')],
      [10, reason('again', 'rework', 'Done again')],
      [30, reason('called-away', 'called-away')],
    ]);
    expect(lostTime([turn]).map((lost) => lost.reason)).toEqual(['called-away', 'again']);
  });

  it('adds up in whole seconds to the ledger of the day, and to what the operator reads, however they fall', () => {
    // 1.6 s in three stretches of one turn: from second 1 to 3, 4 to 5, 7 to 8, so 2 + 1 + 1; rounded sums would say 5.
    const stops: [number, TurnFact][] = [];
    for (const [place, fromS] of [1.6, 4.2, 7].entries()) {
      stops.push([fromS, { kind: 'stopped' }], [fromS + 1.6, { kind: 'resumed' }]);
      const why = place === 0 ? reason('material') : reason('machine');
      stops.push([
        fromS + 1.6,
        {
          kind: 'stoppage-explained',
          stoppage: `t:${2 + place * 3}`,
          reason: why.id,
          label: '',
          category: 'stoppage',
        },
      ]);
    }
    const turns = [turnOf(stops)];
    const lost = lostTime(turns).map(({ reason: id, seconds }) => [id, seconds]);
    expect(lost).toEqual([
      ['machine', 2],
      ['material', 2],
    ]);
    const { seconds } = reviewDay('2026-03-02', turns);
    expect(seconds.stoppage).toBe(4);
    expect(Object.values(seconds).reduce((sum, each) => sum + each, 0)).toBe(8);
  });

  it('words a reason as the shop worded it last, in whatever order the turns come', () => {
    const morning = turnWithStops([[10, reason('own-1', 'stoppage', 'Dust')]]);
    const evening = turnWithStops([[10, reason('own-1', 'stoppage', 'Extraction clear-out')]], 30_000);
    for (const turns of [
      [morning, evening],
      [evening, morning],
    ]) {
      expect(lostTime(turns)).toEqual([
        { reason: 'own-1', label: 'Extraction clear-out', count: 2, lostMs: 20_000, seconds: 20 },
      ]);
    }
  });
});
