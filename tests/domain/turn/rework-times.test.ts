import { describe, expect, it } from 'vitest';
import { Bench } from '../../../src/application/bench';
import { beginRework } from '../../../src/application/turn/begin-rework';
import { explainStoppage } from '../../../src/application/turn/explain-stoppage';
import { markPartDone } from '../../../src/application/turn/mark-part-done';
import { resumeWork } from '../../../src/application/turn/resume-work';
import { startTurn } from '../../../src/application/turn/start-turn';
import { stopWork } from '../../../src/application/turn/stop-work';
import { undoLastTap } from '../../../src/application/turn/undo-last-tap';
import { partsOfDay } from '../../../src/domain/day/part-of-day';
import { ledgerTotals } from '../../../src/domain/turn/ledger-totals';
import { InMemoryRecordLog } from '../../../src/storage/in-memory-record-log';
import { FakeClock } from '../../support/fake-clock';
import { partM } from './turn-script';

/** A turn with two parts of 80 s. */
async function afterTwoParts() {
  const clock = new FakeClock();
  const bench = await Bench.open(new InMemoryRecordLog('t'), clock);
  startTurn(bench, 'K7', partM);
  for (let part = 0; part < 2; part += 1) {
    clock.pass(80_000);
    markPartDone(bench, clock.now());
  }
  return { bench, clock };
}

/** Two parts of 80 s; then 30 s into the third the first one is made good for 50 s, and the third takes 60 s more. */
async function afterRework(isStopped = false) {
  const { bench, clock } = await afterTwoParts();
  clock.pass(30_000);
  if (isStopped) stopWork(bench, clock.now());
  beginRework(bench, bench.turn.value!.cycles[0]!.key, clock.now());
  clock.pass(50_000);
  resumeWork(bench, clock.now());
  clock.pass(60_000);
  markPartDone(bench, clock.now());
  return { bench, clock, turn: () => bench.turn.value! };
}

describe('rework', () => {
  it('that was begun by mistake leaves nothing behind once it is taken back', async () => {
    for (const isStopped of [false, true]) {
      const { bench, clock } = await afterTwoParts();
      const before = bench.turn.value!;
      clock.pass(5_000);
      if (isStopped) stopWork(bench, clock.now());
      beginRework(bench, before.cycles[0]!.key, clock.now());
      clock.pass(3_000);
      undoLastTap(bench);
      const { status, cycles, undoable } = bench.turn.value!;
      expect({ status, cycles, undoable }).toEqual({
        status: 'running',
        cycles: before.cycles,
        undoable: before.undoable,
      });
      await bench.rest();
    }
  });

  it('belongs to the part it was done on, and to no cycle', async () => {
    for (const isStopped of [false, true]) {
      const { turn } = await afterRework(isStopped);
      expect(turn().cycles.map(({ outcome, netMs, reworkMs }) => [outcome, netMs, reworkMs])).toEqual([
        ['rework', 80_000, 50_000],
        ['good', 80_000, 0],
        ['good', 90_000, 0],
      ]);
      expect(ledgerTotals(turn().ledger)).toMatchObject({ cycle: 250_000, rework: 50_000, stoppage: 0 });
      expect(partsOfDay(turn().cycles)).toMatchObject([
        { good: 2, rework: 1, netTimesMs: [80_000, 80_000, 90_000] },
      ]);
    }
  });

  it('is what the ledger says of it: time that was put elsewhere is no rework', async () => {
    const { bench, turn } = await afterRework();
    const { key } = turn().stoppages[0]!;
    explainStoppage(bench, turn().id, key, { id: 'material', label: '', category: 'stoppage' });
    expect(turn().cycles[0]).toMatchObject({ outcome: 'rework', reworkMs: 0 });
    const other = { category: 'set-up', reason: 'set-up', label: '', by: 'F1', why: 'told' } as const;
    const again = await afterRework();
    again.bench.record(again.turn().id, [
      { kind: 'time-reclassified', fromMs: 190_000, toMs: 210_000, ...other },
    ]);
    expect(again.turn().cycles[0]!.reworkMs).toBe(30_000);
  });

  it('adds up over several times, and runs while it lasts', async () => {
    const { bench, clock, turn } = await afterRework();
    beginRework(bench, turn().cycles[0]!.key, clock.now());
    clock.pass(5_000);
    bench.record(turn().id, [{ kind: 'part-judged', partDone: turn().cycles[1]!.key, outcome: 'good' }]);
    expect(turn().cycles[0]!.reworkMs).toBe(55_000);
    expect(turn().status).toBe('stopped');
  });
});
