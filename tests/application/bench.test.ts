import { describe, expect, it } from 'vitest';
import { Bench } from '../../src/application/bench';
import { definePart } from '../../src/application/shop/define-part';
import { setTarget } from '../../src/application/shop/set-target';
import { answerGap } from '../../src/application/turn/answer-gap';
import { endTurn } from '../../src/application/turn/end-turn';
import { markPartDone } from '../../src/application/turn/mark-part-done';
import { partInHand } from '../../src/application/turn/part-in-hand';
import { startTurn } from '../../src/application/turn/start-turn';
import { stopWork } from '../../src/application/turn/stop-work';
import type { LogRecord } from '../../src/domain/records/log-record';
import { pace } from '../../src/domain/turn/pace';
import { InMemoryRecordLog } from '../../src/storage/in-memory-record-log';
import { FakeClock } from '../support/fake-clock';

async function openTurn(log = new InMemoryRecordLog('t'), clock = new FakeClock()) {
  const bench = await Bench.open(log, clock);
  const part = definePart(bench, 'M', 'Medium door');
  setTarget(bench, part, 90_000);
  startTurn(bench, 'K7', partInHand(bench.shop.value.parts[0]!));
  await settled();
  return { log, clock, bench };
}

const settled = () => new Promise((resolve) => setTimeout(resolve, 0));

describe('the bench', () => {
  it('shows a tap before the log has answered', async () => {
    const { bench, clock } = await openTurn();
    clock.pass(80_000);
    markPartDone(bench, clock.now());
    expect(bench.turn.value?.cycles.map(({ netMs }) => netMs)).toEqual([80_000]);
    expect(bench.saving.value.state).toBe('recorded');
    await settled();
    expect(bench.saving.value.state).toBe('saved');
  });

  it('gives a tap at once to whoever asks, and tells whoever looks on once it is saved', async () => {
    const { bench, clock } = await openTurn();
    clock.pass(80_000);
    const seen: number[] = [];
    const stop = bench.turn.subscribe((turn) => seen.push(turn!.cycles.length));
    markPartDone(bench, clock.now());
    await settled();
    expect(seen).toEqual([0]);
    clock.pass(0);
    await settled();
    expect(seen).toEqual([0, 1]);
    clock.pass(80_000);
    markPartDone(bench, clock.now());
    expect(bench.turn.peek()?.cycles).toHaveLength(2);
    expect(seen).toEqual([0, 1, 2]);
    stop();
  });

  it('takes a tap that nobody asked for into the turn though it is not saved, after 12 ms', async () => {
    const { bench, clock, log } = await openTurn();
    log.append = () => new Promise(() => {});
    const seen: number[] = [];
    const stop = bench.turn.subscribe((turn) => seen.push(turn!.cycles.length));
    clock.pass(80_000);
    markPartDone(bench, clock.now());
    clock.pass(11);
    await settled();
    expect(seen).toEqual([0]);
    expect(bench.isSavingLate.value).toBe(false);
    clock.pass(1);
    await settled();
    expect(seen).toEqual([0, 1]);
    expect(bench.isSavingLate.value).toBe(true);
    stop();
  });

  it('numbers its records 1, 2, 3 … and goes on after the last number when it is opened again', async () => {
    const { bench, clock, log } = await openTurn();
    markPartDone(bench, clock.now());
    await settled();
    clock.reload(5_000);
    const again = await Bench.open(log, clock);
    markPartDone(again, clock.now());
    await settled();
    const numbers: number[] = [];
    for await (const batch of log.readAll()) numbers.push(...batch.map(({ sequence }) => sequence));
    // The fifth says that the page is there again.
    expect(numbers).toEqual([1, 2, 3, 4, 5, 6]);
  });

  it('takes the open turn up again after a reload, and its part goes on by the wall clock', async () => {
    const { clock, log } = await openTurn();
    clock.pass(30_000);
    clock.reload(20_000);
    const again = await Bench.open(log, clock);
    expect(again.turn.value?.person).toBe('K7');
    expect(pace(again.turn.value!, clock.now()).partElapsedMs).toBe(50_000);
  });

  it('takes up no turn that ended', async () => {
    const { bench, clock, log } = await openTurn();
    endTurn(bench, clock.now());
    await settled();
    const again = await Bench.open(log, clock);
    expect(again.turn.value).toBeNull();
    expect(again.busy).toBe(false);
  });

  it('writes a sleep of ten minutes down once, whether the heartbeat or a tap notices it first', async () => {
    for (const first of ['heartbeat', 'tap']) {
      const { bench, clock } = await openTurn();
      clock.pass(30_000);
      clock.sleep(600_000);
      if (first === 'heartbeat') clock.pass(10_000);
      else clock.monoMs += 10_000;
      if (first === 'tap') clock.wallMs += 10_000;
      markPartDone(bench, clock.now());
      // 30 s before and 10 s after it are the part's; the sleep is nobody's until somebody says what it was.
      expect(bench.turn.value?.cycles.map(({ netMs }) => netMs)).toEqual([40_000]);
      const gap = bench.turn.value!.doubts[0]!;
      expect(gap.kind).toBe('gap');
      expect(gap.toMs - gap.fromMs).toBe(600_000);
      answerGap(bench, bench.turn.value!.id, gap.key, 'work');
      expect(bench.turn.value?.cycles.map(({ netMs }) => netMs)).toEqual([640_000]);
    }
  });

  it('lets a clock that was set change no duration', async () => {
    const { bench, clock } = await openTurn();
    clock.pass(30_000);
    clock.setBy(7 * 60_000);
    clock.pass(30_000);
    markPartDone(bench, clock.now());
    clock.setBy(-60 * 60_000);
    clock.pass(45_000);
    markPartDone(bench, clock.now());
    expect(bench.turn.value?.cycles.map(({ netMs }) => netMs)).toEqual([60_000, 45_000]);
  });

  it('writes the steps of a coarse clock down where a turn begins, and those of a fine one nowhere', async () => {
    for (const [step, told] of [
      [100, { clockStepMs: 100 }],
      [5, {}],
    ] as const) {
      const clock = new FakeClock();
      clock.step = step;
      const log = new InMemoryRecordLog('t');
      const bench = await Bench.open(log, clock);
      startTurn(bench, 'K7', { part: 't:1', partCode: 'M', targetMs: 90_000 });
      await new Promise((resolve) => setTimeout(resolve, 0));
      const [start] = await log.readLatestStarts('turn', 1);
      expect(start?.fact).toEqual({
        kind: 'turn-started',
        starts: 'turn',
        person: 'K7',
        part: 't:1',
        partCode: 'M',
        targetMs: 90_000,
        ...told,
      });
    }
  });

  it('is busy while a turn runs or stands still, so that nothing reloads the page', async () => {
    const { bench, clock } = await openTurn();
    expect(bench.busy).toBe(true);
    stopWork(bench, clock.now());
    expect(bench.busy).toBe(true);
    endTurn(bench, clock.now());
    expect(bench.busy).toBe(false);
  });

  it('rejects when the log cannot be read, and never shows an empty shop instead', async () => {
    const log = new InMemoryRecordLog('t');
    log.readStream = () => Promise.reject(new DOMException('backing store', 'UnknownError'));
    await expect(Bench.open(log, new FakeClock())).rejects.toThrow('backing store');
  });

  it('goes on recording in memory when the log refuses, and says that it is not saved', async () => {
    const { bench, clock, log } = await openTurn();
    log.append = () => Promise.reject(new DOMException('full', 'QuotaExceededError'));
    clock.pass(70_000);
    markPartDone(bench, clock.now());
    clock.pass(75_000);
    markPartDone(bench, clock.now());
    await settled();
    expect(bench.turn.value?.cycles.map(({ netMs }) => netMs)).toEqual([70_000, 75_000]);
    expect(bench.saving.value).toMatchObject({ state: 'not-saved', unsaved: 2 });
  });

  it('takes what an earlier page could not save from the reserve into the log, once', async () => {
    const log = new InMemoryRecordLog('t');
    const { bench, clock } = await openTurn(log);
    const append = log.append.bind(log);
    let held: LogRecord[] = [];
    const reserve = {
      hold(records: readonly LogRecord[]) {
        held = [...records];
        return true;
      },
      read: () => held,
    };
    await settled();
    bench.close();
    const second = await Bench.open(log, clock, reserve);
    log.append = () => Promise.reject(new DOMException('gone', 'InvalidStateError'));
    clock.pass(70_000);
    markPartDone(second, clock.now());
    await settled();
    expect(held).toHaveLength(1);

    log.append = append;
    clock.reload(5_000);
    const third = await Bench.open(log, clock, reserve);
    expect(third.turn.value?.cycles.map(({ netMs }) => netMs)).toEqual([70_000]);
    expect(held).toEqual([]);
  });

  it('leaves a turn that another tablet has open to that tablet', async () => {
    const { bench, clock, log } = await openTurn();
    endTurn(bench, clock.now());
    await settled();
    const elsewhere = new InMemoryRecordLog('other');
    const { bench: other } = await openTurn(elsewhere, clock);
    await settled();
    for await (const batch of elsewhere.readAll()) await log.append(batch);
    expect(other.turn.value?.status).toBe('running');
    expect((await Bench.open(log, clock)).turn.value).toBeNull();
  });
});
