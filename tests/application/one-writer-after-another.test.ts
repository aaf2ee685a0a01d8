import { beforeEach, describe, expect, it } from 'vitest';
import { Bench } from '../../src/application/bench';
import type { ReserveShelf } from '../../src/application/ports/reserve-shelf';
import { addPerson } from '../../src/application/shop/add-person';
import { ChainCheck } from '../../src/domain/records/chain-check';
import type { LogRecord } from '../../src/domain/records/log-record';
import { InMemoryRecordLog } from '../../src/storage/in-memory-record-log';
import { everything, settled } from '../domain/study/study-at-the-bench';
import { FakeClock } from '../support/fake-clock';

/** One for all tabs of the tablet, as the browser keeps it. */
function reserveOfTablet(): ReserveShelf {
  let held: LogRecord[] = [];
  return {
    hold(records) {
      held = structuredClone([...records]);
      return true;
    },
    read: () => structuredClone(held),
  };
}

const codes = (records: readonly LogRecord[]) =>
  records.flatMap(({ fact }) => (fact.kind === 'person-added' ? [fact.code] : []));
const full = () => Promise.reject(new DOMException('full', 'QuotaExceededError'));

describe('of two tabs, one after the other', () => {
  let log: InMemoryRecordLog;
  let reserve: ReserveShelf;
  let clock: FakeClock;
  let first: Bench;
  /** A tab reaches the records by a handle of its own. */
  const handle = (): InMemoryRecordLog => Object.assign(Object.create(log), { close() {} });

  beforeEach(async () => {
    log = new InMemoryRecordLog('t');
    reserve = reserveOfTablet();
    clock = new FakeClock();
    first = await Bench.open(handle(), clock, reserve);
    addPerson(first, 'early');
    await settled();
  });

  it('what the first could not save comes in once, however often the second is opened again', async () => {
    let second = await Bench.open(handle(), new FakeClock(), reserve);
    addPerson(second, 'of second');
    await settled();
    addPerson(first, 'of first');
    first.close();
    await settled();
    for (let reload = 0; reload < 3; reload += 1) {
      second.close();
      second = await Bench.open(handle(), new FakeClock(), reserve);
      clock.pass(2_000);
      await settled();
    }
    expect(codes(await everything(log))).toEqual(['early', 'of second', 'of first']);
  });

  it('the first leaves alone what the second has in reserve', async () => {
    const own = handle();
    first = await Bench.open(own, clock, reserve);
    own.append = full;
    addPerson(first, 'of first');
    await settled();
    await first.finish();
    const other = handle();
    const second = await Bench.open(other, new FakeClock(), reserve);
    expect(codes(await everything(log))).toEqual(['early', 'of first']);
    other.append = full;
    addPerson(second, 'of second');
    await settled();
    clock.pass(2_000);
    await settled();
    expect(codes(reserve.read())).toEqual(['of second']);
  });

  it('a bench that rests empties no reserve of the one after it', async () => {
    const shared = handle();
    first = await Bench.open(shared, clock, reserve);
    shared.append = full;
    addPerson(first, 'one');
    await settled();
    await first.rest();
    shared.append = (records) => log.append(records);
    const second = await Bench.open(shared, clock, reserve);
    clock.pass(500);
    shared.append = (records) => (codes(records).includes('two') ? full() : log.append(records));
    addPerson(second, 'two');
    await settled();
    // When the first would have tried again, and the second not yet.
    clock.pass(1_600);
    await settled();
    expect(codes(reserve.read())).toEqual(['two']);
  });
});

describe('a full tablet with taps in reserve', () => {
  it('opens with them in hand, numbers on from them, and saves all in order once there is room', async () => {
    const log = new InMemoryRecordLog('t');
    const reserve = reserveOfTablet();
    const clock = new FakeClock();
    const bench = await Bench.open(log, clock, reserve);
    addPerson(bench, 'saved');
    await settled();
    const { append } = log;
    log.append = full;
    addPerson(bench, 'held');
    await settled();
    bench.close();

    const next = await Bench.open(log, clock, reserve);
    expect(next.shop.value.people).toEqual(['saved', 'held']);
    await settled();
    expect(next.saving.value).toMatchObject({ state: 'not-saved', unsaved: 1, isInReserve: true });
    addPerson(next, 'tapped');
    await settled();
    expect(codes(reserve.read())).toEqual(['held', 'tapped']);

    log.append = append;
    clock.pass(2_000);
    await settled();
    const all = await everything(log);
    expect(codes(all)).toEqual(['saved', 'held', 'tapped']);
    const chain = new ChainCheck();
    for (const record of all) chain.take(record);
    expect(chain.breaks).toEqual([]);
    expect(reserve.read()).toEqual([]);
  });
});
