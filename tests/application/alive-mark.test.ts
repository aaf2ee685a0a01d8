import { describe, expect, it } from 'vitest';
import { Bench } from '../../src/application/bench';
import type { AliveMark } from '../../src/application/ports/alive-mark';
import { endTurn } from '../../src/application/turn/end-turn';
import { markPartDone } from '../../src/application/turn/mark-part-done';
import { startTurn } from '../../src/application/turn/start-turn';
import { ledgerTotals } from '../../src/domain/turn/ledger-totals';
import { InMemoryRecordLog } from '../../src/storage/in-memory-record-log';
import { FakeClock } from '../support/fake-clock';

const partM = { part: 't:1', partCode: 'M', targetMs: 300_000 };

class Mark implements AliveMark {
  wallMs: number | null = null;
  set(wallMs: number): void {
    this.wallMs = wallMs;
  }
  read(): number | null {
    return this.wallMs;
  }
}

/** A turn whose page goes away four minutes after its last tap and is there again later. */
async function reloaded(goneMs: number, change: (mark: Mark, clock: FakeClock) => void = () => {}) {
  const log = new InMemoryRecordLog('t');
  const clock = new FakeClock();
  const mark = new Mark();
  const first = await Bench.open(log, clock, null, false, mark);
  startTurn(first, 'K7', partM);
  clock.pass(240_000);
  await first.rest();
  clock.reload(goneMs);
  change(mark, clock);
  const bench = await Bench.open(log, clock, null, false, mark);
  return { bench, clock, mark, log };
}

describe('a page that marks when it was last there', () => {
  it('asks about nothing after a quick reload late in a part: the part’s time goes on', async () => {
    const { bench, clock } = await reloaded(2_000);
    clock.pass(20_000);
    markPartDone(bench, clock.now());
    const { doubts, cycles } = bench.turn.value!;
    expect(doubts).toEqual([]);
    expect(cycles).toMatchObject([{ netMs: 262_000, isCounted: true }]);
  });

  it('asks about nothing after a quick reload right after a tap: the next part has its whole time', async () => {
    const { bench: first, clock, log, mark } = await reloaded(2_000);
    markPartDone(first, clock.now());
    clock.pass(1_000);
    await first.rest();
    clock.reload(2_000);
    const bench = await Bench.open(log, clock, null, false, mark);
    clock.pass(13_000);
    markPartDone(bench, clock.now());
    const { doubts, cycles } = bench.turn.value!;
    expect(doubts).toEqual([]);
    expect(cycles.at(-1)).toMatchObject({ netMs: 16_000, isCounted: true });
  });

  it('asks about the time for which it was gone, and about no more', async () => {
    const { bench, clock } = await reloaded(90_000);
    clock.pass(20_000);
    markPartDone(bench, clock.now());
    const { doubts, ledger } = bench.turn.value!;
    expect(doubts).toMatchObject([{ kind: 'gap', fromMs: 240_000, toMs: 330_000 }]);
    expect(ledgerTotals(ledger)).toMatchObject({ cycle: 260_000, unaccounted: 90_000 });
  });

  it('asks about all of it where the mark is lost, is older than the last tap, or comes from a clock ahead', async () => {
    const spoil: ((mark: Mark, clock: FakeClock) => void)[] = [
      (mark) => {
        mark.wallMs = null;
      },
      (mark) => {
        mark.wallMs = 1;
      },
      (mark, clock) => {
        mark.wallMs = clock.wallMs + 1;
      },
    ];
    for (const change of spoil) {
      const { bench } = await reloaded(2_000, change);
      expect(bench.turn.value!.gaps).toMatchObject([{ fromMs: 0, toMs: 242_000 }]);
    }
  });

  it('marks nothing while nothing is timed, and nothing in a tab that only reads', async () => {
    const { bench, clock, mark, log } = await reloaded(2_000);
    const atMs = clock.wallMs;
    clock.pass(5_000);
    expect(mark.wallMs).toBe(atMs + 5_000);
    const reader = new Mark();
    await Bench.open(log, clock, null, true, reader);
    endTurn(bench, clock.now());
    clock.pass(5_000);
    expect([mark.wallMs, reader.wallMs]).toEqual([atMs + 5_000, null]);
  });
});
