import { describe, expect, it } from 'vitest';
import { foldTurn } from '../../../src/domain/turn/fold-turn';
import { ledgerTotals } from '../../../src/domain/turn/ledger-totals';
import { recordAt, stampAt } from '../../support/records';
import {
  change,
  counted,
  done,
  ended,
  explained,
  gapIs,
  judged,
  partL,
  partM,
  partN,
  resumed,
  stopped,
  turnRecords,
  undone,
} from './turn-script';

const netTimes = (records: ReturnType<typeof turnRecords>) =>
  foldTurn(records).cycles.map(({ netMs }) => netMs);

describe('foldTurn', () => {
  it('gives a part the time from the tap before it to its own', () => {
    // Taps at 80 s and 175 s: 80 − 0 and 175 − 80.
    expect(
      netTimes(
        turnRecords([
          [80, done()],
          [175, done()],
        ]),
      ),
    ).toEqual([80_000, 95_000]);
  });

  it('takes stopped time out of the part it fell into, and out of no other', () => {
    // 0 → 100 s with 30 → 55 s stopped: 100 − 25 = 75 s. The next, 100 → 190 s, has no stoppage: 90 s.
    const records = turnRecords([
      [30, stopped],
      [55, resumed],
      [100, done()],
      [190, done()],
    ]);
    expect(netTimes(records)).toEqual([75_000, 90_000]);
  });

  it('takes every stoppage out of a part that was stopped twice', () => {
    // 0 → 200 s, stopped 20 → 50 and 120 → 160 s: 200 − 30 − 40 = 130 s.
    const records = turnRecords([
      [20, stopped],
      [50, resumed],
      [120, stopped],
      [160, resumed],
      [200, done()],
    ]);
    expect(netTimes(records)).toEqual([130_000]);
  });

  it('takes a part that is done during a stoppage as the end of that stoppage', () => {
    // Stopped at 40 s, done at 70 s: 40 s worked, 30 s stopped, and work runs on.
    const turn = foldTurn(
      turnRecords([
        [40, stopped],
        [70, done()],
      ]),
    );
    expect(turn.cycles.map(({ netMs }) => netMs)).toEqual([40_000]);
    expect(turn.stoppages).toMatchObject([{ fromMs: 40_000, toMs: 70_000 }]);
    expect(turn.status).toBe('running');
  });

  it('lets no part of later time change the target that a part was done under', () => {
    const turn = foldTurn(
      turnRecords([
        [80, done(partM)],
        [85, change(partL)],
        [240, done(partL)],
        [245, change({ ...partM, targetMs: 60_000 })],
        [300, done({ ...partM, targetMs: 60_000 })],
      ]),
    );
    expect(turn.cycles.map(({ partCode, targetMs }) => [partCode, targetMs])).toEqual([
      ['M', 90_000],
      ['L', 150_000],
      ['M', 60_000],
    ]);
    expect(turn.inHand.targetMs).toBe(60_000);
  });

  it('gives the time before a part change to the part that was changed to', () => {
    // One tap a part: 0 → 30 s under M, changed, done as N at 100 s. The whole 100 s went into that piece.
    const turn = foldTurn(
      turnRecords([
        [30, change(partN)],
        [100, done(partN)],
      ]),
    );
    expect(turn.cycles).toMatchObject([{ partCode: 'N', targetMs: null, netMs: 100_000 }]);
  });

  it('keeps a stoppage neutral until somebody explains it, and follows the last explanation', () => {
    const said = [
      [30, stopped],
      [55, resumed],
    ] as const;
    expect(foldTurn(turnRecords(said)).stoppages).toMatchObject([
      { reason: 'not-stated', category: 'stoppage' },
    ]);
    const later = foldTurn(
      turnRecords([
        ...said,
        [60, explained(11, 'machine', 'stoppage')],
        [90, explained(11, 'break', 'planned-break')],
      ]),
    );
    expect(later.stoppages).toMatchObject([{ reason: 'break', category: 'planned-break' }]);
    // 30 → 55 s = 25 s of the 90 s, the rest worked.
    expect(ledgerTotals(later.ledger)).toMatchObject({ 'planned-break': 25_000, stoppage: 0, cycle: 65_000 });
  });

  it('counts a part good until it is judged, and follows the last judgement', () => {
    const outcomes = (...more: Parameters<typeof turnRecords>[0]) =>
      foldTurn(turnRecords([[80, done()], ...more])).cycles.map(({ outcome }) => outcome);
    expect(outcomes()).toEqual(['good']);
    expect(outcomes([85, judged(11, 'scrap')])).toEqual(['scrap']);
    expect(outcomes([85, judged(11, 'scrap')], [99, judged(11, 'rework')])).toEqual(['rework']);
  });

  it('counts a sleep once, and as work only when somebody says so', () => {
    // 30 s worked, 600 s asleep, 10 s more. The monotonic clock shows 40 s; 40 + 600 = 640 s.
    const woken = stampAt(40_000, { wallMs: stampAt(640_000).wallMs });
    const records = turnRecords([
      [0, { kind: 'slept', sleptMs: 600_000 }, woken],
      [0, done(), woken],
    ]);
    const turn = foldTurn(records);
    expect(turn.lastAtMs).toBe(640_000);
    expect(ledgerTotals(turn.ledger)).toMatchObject({ cycle: 40_000, unaccounted: 600_000 });
    expect(turn.cycles).toMatchObject([{ netMs: 40_000, isCounted: false, doubt: 'gap' }]);
    const answered = foldTurn([
      ...records,
      recordAt(13, 40_000, 't:10', gapIs(11, 'work'), { stamp: woken }),
    ]);
    expect(answered.cycles).toMatchObject([{ netMs: 640_000, isCounted: true, doubt: null }]);
    expect(ledgerTotals(answered.ledger)).toMatchObject({ cycle: 640_000, unaccounted: 0 });
  });

  it('measures across a reload by the wall clock, because the monotonic one began anew', () => {
    // Started at 0 s in run-1. In run-2 the monotonic clock says 5 s, the wall clock says 95 s after the start.
    const afterReload = stampAt(95_000, { run: 'run-2', monoMs: 5_000 });
    const later = stampAt(155_000, { run: 'run-2', monoMs: 65_000 });
    const records = turnRecords([
      [0, done(), afterReload],
      [0, done(), later],
    ]);
    // Nobody saw the 95 s in which the page was gone; called work, they are the first part's.
    expect(netTimes(records)).toEqual([0, 60_000]);
    expect(ledgerTotals(foldTurn(records).ledger)).toMatchObject({ cycle: 60_000, unaccounted: 95_000 });
    const answer = recordAt(13, 0, 't:10', gapIs(11, 'work'), { stamp: later });
    expect(netTimes([...records, answer])).toEqual([95_000, 60_000]);
  });

  it('gives no part a negative time when the wall clock was set back across a reload', () => {
    const setBack = stampAt(-3_600_000, { run: 'run-2', monoMs: 5_000 });
    // No time passed between the two, so the tap counts only because somebody says so.
    const records = turnRecords([
      [0, done(), setBack],
      [0, counted(11), setBack],
    ]);
    expect(netTimes(records)).toEqual([0]);
  });

  it('writes the time since the last part of an ended turn down as unaccounted, never as a cycle', () => {
    // Done at 80 s, ended at 130 s: 50 s belong to no part.
    const turn = foldTurn(
      turnRecords([
        [80, done()],
        [130, ended],
      ]),
    );
    expect(ledgerTotals(turn.ledger)).toMatchObject({ cycle: 80_000, unaccounted: 50_000 });
  });

  it('keeps an ended turn as long as it was, whatever is said about it later', () => {
    // Ended at 130 s; judged and explained an hour later. Elapsed stays 130 s, and the words still count.
    const turn = foldTurn(
      turnRecords([
        [40, stopped],
        [60, resumed],
        [80, done()],
        [130, ended],
        [3_700, judged(13, 'scrap')],
        [3_701, explained(11, 'machine', 'stoppage')],
      ]),
    );
    expect(turn.lastAtMs).toBe(130_000);
    expect(turn.cycles).toMatchObject([{ outcome: 'scrap' }]);
    expect(turn.stoppages).toMatchObject([{ reason: 'machine' }]);
  });

  it('ignores taps after the end', () => {
    const before = turnRecords([
      [80, done()],
      [130, ended],
    ]);
    const after = turnRecords([
      [80, done()],
      [130, ended],
      [140, done()],
      [150, stopped],
      [160, change(partL)],
      [170, ended],
    ]);
    expect({ ...foldTurn(after), lastByHandAt: null }).toEqual({ ...foldTurn(before), lastByHandAt: null });
  });

  it('ignores a stop while stopped and a go-on while running', () => {
    const turn = foldTurn(
      turnRecords([
        [10, resumed],
        [30, stopped],
        [40, stopped],
        [55, resumed],
        [100, done()],
      ]),
    );
    // One stoppage, 30 → 55 s; 100 − 25 = 75 s.
    expect(turn.stoppages).toMatchObject([{ fromMs: 30_000, toMs: 55_000 }]);
    expect(turn.cycles.map(({ netMs }) => netMs)).toEqual([75_000]);
  });

  it('joins the two parts whose dividing tap was taken back', () => {
    // Taps at 80 s (taken back) and 175 s: one part of 175 s.
    const records = turnRecords([
      [80, done()],
      [82, undone(11)],
      [175, done()],
    ]);
    expect(netTimes(records)).toEqual([175_000]);
  });

  it('says which tap Undo would take back: the last one that still stands', () => {
    const undoable = (lines: Parameters<typeof turnRecords>[0]) => foldTurn(turnRecords(lines)).undoable;
    expect(undoable([])).toBeNull();
    expect(
      undoable([
        [80, done()],
        [90, stopped],
      ]),
    ).toMatchObject({ key: 't:12', kind: 'stopped' });
    expect(
      undoable([
        [80, done()],
        [90, stopped],
        [92, undone(12)],
      ]),
    ).toMatchObject({ key: 't:11', kind: 'part-done' });
    expect(
      undoable([
        [80, done()],
        [90, ended],
      ]),
    ).toBeNull();
  });

  it('refuses a stream that does not begin with a turn', () => {
    expect(() => foldTurn([])).toThrow('foldTurn requires a stream that begins with a turn');
    expect(() => foldTurn(turnRecords([[80, done()]]).slice(1))).toThrow(RangeError);
  });
});
