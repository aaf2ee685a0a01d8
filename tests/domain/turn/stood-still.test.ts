import { describe, expect, it } from 'vitest';
import { foldTurn } from '../../../src/domain/turn/fold-turn';
import { ledgerTotals } from '../../../src/domain/turn/ledger-totals';
import { stoodStill } from '../../../src/domain/turn/stood-still';
import { stampAt } from '../../support/records';
import { done, ended, explained, gapIs, type Line, resumed, stopped, turnRecords } from './turn-script';

/** The tablet's own clocks: so many seconds awake, and 171 s asleep before that moment. */
const woken = (awakeS: number) => stampAt(awakeS * 1_000, { wallMs: stampAt((awakeS + 171) * 1_000).wallMs });
const away = { category: 'called-away', reason: 'called-away', label: '' } as const;
/** Stopped for 5 s at 20 s; asleep from 60 s to 231 s; M done 40 s later. */
const lines = (...more: readonly Line[]): Line[] => [
  [20, stopped],
  [25, resumed],
  [0, { kind: 'slept', sleptMs: 171_000 }, woken(60)],
  [0, done(), woken(100)],
  [0, explained(11, 'called-away', 'called-away'), woken(101)],
  ...more,
];
const listed = (...more: readonly Line[]) => {
  const turn = foldTurn(turnRecords([...lines(...more), [0, ended, woken(110)]]));
  const spans = stoodStill(turn).map(({ key, is, reason, fromMs, toMs }) => [key, is, reason, toMs - fromMs]);
  return { spans, totals: ledgerTotals(turn.ledger) };
};

describe('the list of what stood still', () => {
  it('has a gap that was no work beside the stops that were tapped, and adds up to the ledger', () => {
    const { spans, totals } = listed([0, gapIs(13, away), woken(102)]);
    expect(spans).toEqual([
      ['t:11', 'tapped', 'called-away', 5_000],
      ['t:13', 'gap', 'called-away', 171_000],
    ]);
    expect(totals['called-away']).toBe(176_000);
  });

  it('has none that was work, or of which nobody said anything', () => {
    const tapped = [['t:11', 'tapped', 'called-away', 5_000]];
    expect(listed().spans).toEqual(tapped);
    expect(listed([0, gapIs(13, 'work'), woken(102)]).spans).toEqual(tapped);
  });

  it('has a stretch of work that was put right afterwards, and still adds up to the ledger', () => {
    const forgotten: Line = [
      0,
      {
        kind: 'time-reclassified',
        fromMs: 31_000,
        toMs: 41_000,
        category: 'stoppage',
        reason: 'machine',
        label: '',
        by: 'K7',
        why: 'stop was forgotten',
      },
      woken(103),
    ];
    const { spans, totals } = listed(forgotten);
    expect(spans).toEqual([
      ['t:11', 'tapped', 'called-away', 5_000],
      ['31000', 'put-right', 'machine', 10_000],
    ]);
    expect(totals.stoppage).toBe(10_000);
  });
});
