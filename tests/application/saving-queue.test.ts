import { describe, expect, it } from 'vitest';
import { SavingQueue } from '../../src/application/saving-queue';
import type { LogRecord } from '../../src/domain/records/log-record';
import { FakeClock } from '../support/fake-clock';
import { recordAt } from '../support/records';

const done = { kind: 'part-done', part: 'p', partCode: 'M', targetMs: null } as const;
const record = (sequence: number) => recordAt(sequence, sequence * 1_000, 't:1', done);

/** A log whose answers the test gives by hand. */
class SlowLog {
  readonly written: number[] = [];
  private waiting: { records: readonly LogRecord[]; resolve: () => void; reject: (why: Error) => void }[] =
    [];

  append(records: readonly LogRecord[]): Promise<void> {
    return new Promise((resolve, reject) => this.waiting.push({ records, resolve, reject }));
  }

  get calls(): number {
    return this.waiting.length;
  }

  async accept(): Promise<void> {
    const { records, resolve } = this.waiting.shift()!;
    this.written.push(...records.map(({ sequence }) => sequence));
    resolve();
    await settled();
  }

  async refuse(why: Error): Promise<void> {
    this.waiting.shift()!.reject(why);
    await settled();
  }
}

const settled = () => new Promise((resolve) => setTimeout(resolve, 0));

function setUp() {
  const log = new SlowLog();
  const clock = new FakeClock();
  return { log, clock, queue: new SavingQueue(log, clock) };
}

describe('the saving queue', () => {
  it('says recorded until the log has answered, and saved only then', async () => {
    const { log, queue } = setUp();
    queue.add([record(1)]);
    expect(queue.saving.value).toEqual({ state: 'recorded', unsaved: 1, problem: '', isInReserve: false });
    await log.accept();
    expect(queue.saving.value).toEqual({ state: 'saved', unsaved: 0, problem: '', isInReserve: false });
  });

  it('sends the next records only after the ones before them are saved', async () => {
    const { log, queue } = setUp();
    queue.add([record(1)]);
    queue.add([record(2)]);
    queue.add([record(3)]);
    expect(log.calls).toBe(1);
    await log.accept();
    expect(queue.saving.value.state).toBe('recorded');
    await log.accept();
    expect(log.written).toEqual([1, 2, 3]);
    expect(queue.saving.value.state).toBe('saved');
  });

  it('keeps what the log refused, says so with the reason, and saves it in order later', async () => {
    const { log, clock, queue } = setUp();
    queue.add([record(1)]);
    await log.refuse(new DOMException('no room', 'QuotaExceededError'));
    expect(queue.saving.value).toEqual({
      state: 'not-saved',
      unsaved: 1,
      problem: 'QuotaExceededError: no room',
      isInReserve: false,
    });
    queue.add([record(2)]);
    expect(queue.saving.value.state).toBe('not-saved');
    await log.refuse(new DOMException('no room', 'QuotaExceededError'));
    clock.pass(2_000);
    await log.accept();
    expect(log.written).toEqual([1, 2]);
    expect(queue.saving.value).toEqual({ state: 'saved', unsaved: 0, problem: '', isInReserve: false });
  });

  it('says not saved when the log has not answered for two seconds', async () => {
    const { log, clock, queue } = setUp();
    queue.add([record(1)]);
    clock.pass(1_999);
    expect(queue.saving.value.state).toBe('recorded');
    clock.pass(1);
    expect(queue.saving.value).toEqual({
      state: 'not-saved',
      unsaved: 1,
      problem: 'no answer',
      isInReserve: false,
    });
    await log.accept();
    expect(queue.saving.value.state).toBe('saved');
  });

  it('lays what is not saved in the reserve, at once, and clears it when all is saved', async () => {
    const log = new SlowLog();
    const clock = new FakeClock();
    let held: readonly LogRecord[] = [];
    const reserve = {
      hold: (records: readonly LogRecord[]) => {
        held = [...records];
        return true;
      },
      read: () => [...held],
    };
    const queue = new SavingQueue(log, clock, reserve);
    queue.add([record(1)]);
    expect(held).toEqual([]);
    await log.refuse(new DOMException('closed', 'AbortError'));
    expect(held).toEqual([record(1)]);
    expect(queue.saving.value.isInReserve).toBe(true);
    queue.add([record(2)]);
    expect(held).toEqual([record(1), record(2)]);
    clock.pass(2_000);
    await log.accept();
    await log.accept().catch(() => {});
    expect(queue.saving.value).toEqual({ state: 'saved', unsaved: 0, problem: '', isInReserve: false });
    expect(held).toEqual([]);
  });

  it('says in memory only when the reserve has no room', async () => {
    const log = new SlowLog();
    const queue = new SavingQueue(log, new FakeClock(), { hold: () => false, read: () => [] });
    queue.add([record(1)]);
    await log.refuse(new DOMException('closed', 'AbortError'));
    expect(queue.saving.value.isInReserve).toBe(false);
  });
});
