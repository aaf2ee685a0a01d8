import { describe, expect, it } from 'vitest';
import { takeFromReserve } from '../../src/application/take-from-reserve';
import { chainOf } from '../../src/domain/records/chain';
import { ChainCheck } from '../../src/domain/records/chain-check';
import type { Fact, LogRecord } from '../../src/domain/records/log-record';
import { InMemoryRecordLog } from '../../src/storage/in-memory-record-log';
import { recordAt } from '../support/records';

const part = { part: 't:1', partCode: 'M', targetMs: 90_000 } as const;
const person = (code: string): Fact => ({ kind: 'person-added', code });

/** Facts as records of one tablet, each chained to the one before. */
function chained(after: { sequence: number; chain: number }, facts: readonly [string, Fact][]): LogRecord[] {
  let { sequence, chain } = after;
  return facts.map(([stream, fact]) => {
    sequence += 1;
    const record = recordAt(sequence, sequence * 1_000, stream, fact);
    chain = chainOf(record, chain);
    return { ...record, chain };
  });
}

function reserveOf(records: readonly LogRecord[]) {
  let held = [...records];
  return {
    hold(next: readonly LogRecord[]) {
      held = [...next];
      return true;
    },
    read: () => [...held],
  };
}

async function contentOf(log: InMemoryRecordLog): Promise<LogRecord[]> {
  const found: LogRecord[] = [];
  for await (const batch of log.readAll()) found.push(...batch);
  return found;
}

const before = chained({ sequence: 0, chain: 0 }, [
  ['shop', { kind: 'part-defined', code: 'M', name: '' }],
  ['shop', person('K7')],
]);
const end = before.at(-1)!;
/** A turn that one tab had in reserve while another went on from the same number. */
const inReserve = chained(end, [
  ['t:3', { kind: 'turn-started', starts: 'turn', person: 'K7', ...part }],
  ['t:3', { kind: 'part-done', ...part }],
  ['t:3', { kind: 'undone', of: 't:4' }],
  ['shop', { kind: 'part-retired', part: 't:1', retired: true }],
]);
const ofAnother = chained(end, [
  ['shop', person('K8')],
  ['shop', person('K9')],
]);

describe('what lies in reserve', () => {
  it('goes to the log as it is where its numbers are free, or are its own already', async () => {
    for (const there of [before, [...before, ...inReserve.slice(0, 2)], [...before, ...inReserve]]) {
      const log = new InMemoryRecordLog('t');
      await log.append(there);
      const reserve = reserveOf(inReserve);
      await takeFromReserve(log, reserve);
      expect(await contentOf(log)).toEqual([...before, ...inReserve]);
      expect(reserve.read()).toEqual([]);
    }
  });

  it('goes to its end under new numbers where another tab has given the numbers away, and nothing is lost', async () => {
    const log = new InMemoryRecordLog('t');
    await log.append([...before, ...ofAnother]);
    const reserve = reserveOf(inReserve);
    await takeFromReserve(log, reserve);
    const content = await contentOf(log);
    expect(content.slice(0, 4)).toEqual([...before, ...ofAnother]);
    expect(content.slice(4).map(({ sequence, stream, fact }) => [sequence, stream, fact])).toEqual([
      [5, 't:5', inReserve[0]!.fact],
      [6, 't:5', inReserve[1]!.fact],
      [7, 't:5', { kind: 'undone', of: 't:6' }],
      [8, 'shop', inReserve[3]!.fact],
    ]);
    expect(content.slice(4).map(({ stamp }) => stamp)).toEqual(inReserve.map(({ stamp }) => stamp));
    const check = new ChainCheck();
    for (const record of content) check.take(record);
    expect(check.breaks).toEqual([]);
    expect(reserve.read()).toEqual([]);
  });

  it('keeps the numbers of those before the first that is taken', async () => {
    const log = new InMemoryRecordLog('t');
    await log.append([...before, inReserve[0]!, ...chained(inReserve[0]!, [['shop', person('K8')]])]);
    await takeFromReserve(log, reserveOf(inReserve));
    expect((await contentOf(log)).map(({ stream, fact }) => [stream, fact.kind]).slice(2)).toEqual([
      ['t:3', 'turn-started'],
      ['shop', 'person-added'],
      ['t:3', 'part-done'],
      ['t:3', 'undone'],
      ['shop', 'part-retired'],
    ]);
  });

  it('speaks of its own tab’s records, though another tab gave the same numbers to others', async () => {
    const log = new InMemoryRecordLog('t');
    const turn = chained(end, [
      ['t:3', { kind: 'turn-started', starts: 'turn', person: 'K7', ...part }],
      ['t:3', { kind: 'part-done', ...part }],
      ['t:3', { kind: 'part-done', ...part }],
    ]);
    await log.append([...before, ...turn.slice(0, 2)]);
    // The last tap of the turn, and one of another tab that numbered from the same end.
    await takeFromReserve(log, reserveOf([turn[2]!, ...ofAnother.slice(0, 1)]));
    const content = await contentOf(log);
    const check = new ChainCheck();
    for (const record of content) check.take(record);
    expect(check.breaks).toEqual([]);
    expect(
      content
        .slice(4)
        .map(({ stream, fact }) => `${stream} ${fact.kind}`)
        .sort(),
    ).toEqual(['shop person-added', 't:3 part-done']);
  });

  it('takes what names a piece of a record with it', async () => {
    const log = new InMemoryRecordLog('t');
    await log.append([...before, ...ofAnother]);
    const said = chained(end, [
      ['t:3', { kind: 'turn-started', starts: 'turn', person: 'K7', ...part }],
      ['t:3', { kind: 'part-done', ...part, partsPerTap: 2 }],
      ['t:3', { kind: 'part-judged', partDone: 't:4/1', outcome: 'scrap' }],
      ['t:9', { kind: 'reading-restored', reading: 't:4#0' }],
      ['shop', person('at 10:30')],
    ]);
    await takeFromReserve(log, reserveOf(said));
    expect((await contentOf(log)).slice(6).map(({ fact }) => fact)).toEqual([
      { kind: 'part-judged', partDone: 't:6/1', outcome: 'scrap' },
      { kind: 'reading-restored', reading: 't:6#0' },
      person('at 10:30'),
    ]);
  });

  it('is there once where the browser dies as soon as the log has it', async () => {
    const log = new InMemoryRecordLog('t');
    await log.append([...before, ...ofAnother]);
    const reserve = reserveOf(inReserve);
    const dying = Object.assign(Object.create(log), {
      async append(records: readonly LogRecord[]) {
        await log.append(records);
        if (records.length > 0) throw new DOMException('killed', 'AbortError');
      },
    });
    await takeFromReserve(dying, reserve);
    expect(reserve.read()).toHaveLength(4);
    await takeFromReserve(log, reserve);
    expect(await log.count()).toBe(8);
    expect(reserve.read()).toEqual([]);
  });

  it('stays in reserve when the log refuses, is given back as it is to be written, and is taken the next time', async () => {
    const log = new InMemoryRecordLog('t');
    await log.append([...before, ...ofAnother]);
    const reserve = reserveOf(inReserve);
    const refusing = Object.assign(Object.create(log), {
      append: async () => {
        throw new DOMException('closed', 'InvalidStateError');
      },
    });
    const refused = await takeFromReserve(refusing, reserve);
    expect(refused.map(({ sequence, stamp }) => [sequence, stamp])).toEqual(
      inReserve.map(({ stamp }, place) => [5 + place, stamp]),
    );
    expect(reserve.read()).toEqual(refused);
    expect(await takeFromReserve(log, reserve)).toEqual([]);
    expect(await log.count()).toBe(8);
  });
});
