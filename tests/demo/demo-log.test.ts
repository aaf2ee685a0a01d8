import { describe, expect, it, vi } from 'vitest';
import { demoRecords } from '../../src/demo/demo-records';
import { fillDemo } from '../../src/demo/fill-demo';
import { ChainCheck } from '../../src/domain/records/chain-check';
import { recordKey } from '../../src/domain/records/record-key';
import { InMemoryRecordLog } from '../../src/storage/in-memory-record-log';
import { minutes, records, shop } from './demo-shop';

describe('the log of the demo shop', () => {
  it('is the same every time', () => {
    expect(demoRecords()).toEqual(records);
  });

  it('is one device with unbroken numbers and an unbroken chain', () => {
    const check = new ChainCheck();
    for (const record of records) check.take(record);
    expect(check.breaks).toEqual([]);
    expect(records.map(({ sequence }) => sequence)).toEqual(records.map((_, place) => place + 1));
    expect(new Set(records.map(({ device }) => device))).toEqual(new Set(['demo']));
  });

  it('has clocks that never go back, and a run for every day that began at 07:00', () => {
    const runs = new Map<string, number>();
    let before = 0;
    for (const { stamp } of records) {
      const { run, monoMs, wallMs } = stamp;
      const dawn = runs.get(run) ?? wallMs - monoMs;
      runs.set(run, dawn);
      const isSound =
        wallMs >= before && wallMs - monoMs === dawn && Number.isInteger(monoMs) && stamp.offsetMin === 0;
      if (!isSound) throw new Error(`Odd stamp ${JSON.stringify(stamp)}`);
      before = wallMs;
    }
    expect(new Set(records.map(({ stamp }) => stamp.zone))).toEqual(new Set(['Europe/London']));
    const dawns = [...runs.values()].map((dawn) => new Date(dawn).toISOString());
    expect(dawns).toHaveLength(20);
    expect(dawns.every((dawn) => dawn.endsWith('T07:00:00.000Z'))).toBe(true);
    expect(dawns[19]).toBe('2026-03-27T07:00:00.000Z');
  });

  it('names no record that was not written before', () => {
    const written = new Set<string>(['shop']);
    const unknown = records.flatMap((record) => {
      const { fact } = record;
      written.add(recordKey(record));
      const named = [record.stream];
      if (fact.kind === 'part-judged') named.push(fact.partDone);
      if (fact.kind === 'stoppage-explained') named.push(fact.stoppage);
      if (fact.kind === 'stoppage-absorbed') named.push(fact.stoppage);
      if (fact.kind === 'reading-excluded') named.push(fact.reading);
      return named.filter((key) => !written.has(key));
    });
    expect(unknown).toEqual([]);
  });

  it('fills a log with all of it at once: a page that is left meanwhile leaves no half shop', async () => {
    const log = new InMemoryRecordLog('demo');
    const append = vi.spyOn(log, 'append');
    await fillDemo(log);
    expect(append).toHaveBeenCalledOnce();
    expect(await log.count()).toBe(records.length);
    expect(await log.readStarts('turn')).toHaveLength(40);
    expect(await log.readStarts('study')).toHaveLength(5);
  });
});

describe('the shop of the demo', () => {
  it('has five doors with their standard times as targets', () => {
    // Standard times from the normal times of the elements: 1.14 · (external + occasional) + the longer of
    // 1.14 · internal and 1.04 · machine, by hand; minutes.
    expect(shop.parts.map(({ code, targetMs }) => `${code} ${minutes(targetMs!).toFixed(4)}`)).toEqual([
      'S 1.3370',
      'M 1.5134',
      'L 1.7032',
      'T 1.8379',
      'V 2.1577',
    ]);
    expect(shop.parts.every(({ targetSource }) => targetSource === 'standard')).toBe(true);
  });

  it('has three people by code, and six reasons, of which it words one itself', () => {
    expect(shop.people).toEqual(['K7', 'M2', 'R4']);
    expect(shop.reasons.map(({ id, label }) => label || id)).toEqual([
      'material',
      'machine',
      'Extraction clear-out',
      'called-away',
      'set-up',
      'quality',
    ]);
  });

  it('has a method for M: nine elements of every cycle, three occasional ones', () => {
    const method = shop.parts.find(({ code }) => code === 'M')!.methods[0]!;
    expect(method.elements.filter(({ elementClass }) => elementClass === 'repetitive')).toHaveLength(9);
    expect(
      method.elements.flatMap(({ elementClass, unitsPerOccurrence }) =>
        elementClass === 'occasional' ? [unitsPerOccurrence] : [],
      ),
    ).toEqual([20, 8, 40]);
    expect(method.elements.every(({ breakPoint }) => breakPoint !== '')).toBe(true);
    // The first morning of the second week, when the shop went over to it.
    expect(method.writtenOn).toBe('2026-03-09');
  });
});
