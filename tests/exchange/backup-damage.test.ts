import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { restoreBackup } from '../../src/application/backup/restore-backup';
import type { BackupFault } from '../../src/application/ports/backup-fault';
import { demoRecords } from '../../src/demo/demo-records';
import { chainOf } from '../../src/domain/records/chain';
import { recordLine } from '../../src/domain/records/record-line';
import { backupFormat } from '../../src/exchange/backup-format';
import { LONGEST_LINE_BYTES } from '../../src/exchange/backup-lines';
import { backupFaultInWords } from '../../src/screens/records/fault-in-words';
import { InMemoryRecordLog } from '../../src/storage/in-memory-record-log';
import { arbitraryShop } from '../support/arbitrary-records';
import { type Bytes, backupOf, everythingIn, sealed, sourceOf } from '../support/backup-files';

const format = backupFormat(null);
const shop = demoRecords().slice(0, 60);
const whole = await backupOf(format, shop);
const lines = new TextDecoder().decode(whole).split('\n').slice(0, -1);

/** A log with records of its own, a part of the file's among them. */
const log = new InMemoryRecordLog('own');
await log.append(shop.slice(0, 20));
const before = JSON.stringify(await everythingIn(log));
const bench = { log, busy: false };

/** Tries to restore: the fault, after a look at its sentence and at the log; null when the file was taken. */
async function faultOf(file: Bytes | string): Promise<BackupFault | null> {
  const outcome = await restoreBackup(bench, { format }, sourceOf(file));
  if (outcome.ok) return null;
  expect(outcome.reason).toBe('refused');
  if (outcome.reason !== 'refused') return null;
  const sentence = backupFaultInWords(outcome.fault);
  expect(sentence).toMatch(/^[A-Z].{15,400}\.$/);
  expect(await log.count()).toBe(20);
  return outcome.fault;
}

describe('a damaged backup', () => {
  it('is refused wherever it is cut: all places of a small file', async () => {
    const small = await backupOf(format, shop.slice(0, 12));
    for (let length = 0; length < small.length; length += 1) {
      expect(await faultOf(small.slice(0, length)), `cut to ${length} bytes`).not.toBeNull();
    }
    expect(small.length).toBeGreaterThan(3_000);
  });

  it('is refused with any bit turned over: 4,000 of them', async () => {
    await fc.assert(
      fc.asyncProperty(fc.nat(whole.length - 1), fc.nat(7), async (place, bit) => {
        const damaged = whole.slice();
        damaged[place]! ^= 1 << bit;
        expect(await faultOf(damaged)).not.toBeNull();
      }),
      { numRuns: 4_000 },
    );
  });

  it('is refused when lines are left out, doubled or moved, also when its last line was made to fit', async () => {
    const place = fc.integer({ min: 1, max: lines.length - 3 });
    await fc.assert(
      fc.asyncProperty(place, place, fc.constantFrom('left out', 'doubled', 'swapped'), async (a, b, how) => {
        const changed = lines.slice(0, -1);
        if (how === 'left out') changed.splice(a, 1);
        else if (how === 'doubled') changed.splice(b, 0, lines[a]!);
        else [changed[a], changed[b]] = [lines[b]!, lines[a]!];
        if (how === 'swapped' && a === b) return;
        expect(await faultOf(sealed(changed))).not.toBeNull();
        expect(await faultOf(`${[...changed, lines.at(-1)].join('\n')}\n`)).not.toBeNull();
      }),
      { numRuns: 500 },
    );
  });

  it('never leaves a trace in the log', async () => {
    expect(JSON.stringify(await everythingIn(log)) === before).toBe(true);
  });
});

describe('a hostile backup, its last line made to fit', () => {
  const header = lines[0]!;
  const first = shop[0]!;

  /** The fault of a file whose only record is this value, its checksum right where it has one. */
  async function faultOfRecord(value: unknown): Promise<BackupFault | null> {
    return faultOf(sealed([header, JSON.stringify(value)]));
  }

  it('of random JSON is refused: 3,000 files', async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(fc.json({ maxDepth: 6 }), { minLength: 1, maxLength: 5 }), async (values) => {
        expect(await faultOf(sealed([header, ...values]))).not.toBeNull();
        expect(await faultOf(sealed(values))).not.toBeNull();
      }),
      { numRuns: 1_500 },
    );
  });

  it('of random bytes is refused: 1,000 files', async () => {
    await fc.assert(
      fc.asyncProperty(fc.uint8Array({ maxLength: 300 }), async (bytes) => {
        expect(await faultOf(new Uint8Array(bytes))).not.toBeNull();
      }),
      { numRuns: 1_000 },
    );
  });

  it('with a record in which one value is another is refused, or is a record all the same: 3,000 files', async () => {
    const otherValue = fc.oneof(
      fc.constantFrom(null, true, -1, 0, 1e308, 2 ** 53, '', 'x'.repeat(200), [], {}, [[]], '__proto__'),
      fc.json({ maxDepth: 2 }).map((text) => JSON.parse(text)),
    );
    const outcomes = { taken: 0, refused: 0 };
    await fc.assert(
      fc.asyncProperty(
        arbitraryShop,
        fc.nat(),
        fc.nat(),
        otherValue,
        async (records, which, place, value) => {
          const record = records[which % Math.max(1, records.length)];
          if (!record) return;
          const changed = JSON.parse(recordLine({ ...record, sequence: 1 }));
          putAt(changed, place, value);
          // Its chain is made right, so that only what the record holds can refuse it.
          const chained = {
            ...changed,
            chain: typeof changed.chain === 'number' ? chainOf(changed, 0) : changed.chain,
          };
          const target = new InMemoryRecordLog('own');
          const outcome = await restoreBackup(
            { log: target, busy: false },
            { format },
            sourceOf(sealed([header, JSON.stringify(chained)])),
          );
          outcomes[outcome.ok ? 'taken' : 'refused'] += 1;
          expect(await target.count()).toBe(outcome.ok ? 1 : 0);
        },
      ),
      { numRuns: 3_000 },
    );
    // Both must happen, or the property says little.
    expect(outcomes.taken).toBeGreaterThan(100);
    expect(outcomes.refused).toBeGreaterThan(1_000);
  });

  it('with a value nested a million deep is refused', async () => {
    const deep = `${'['.repeat(1_000_000)}${']'.repeat(1_000_000)}`;
    const line = recordLine(first).replace('"fact":{', `"fact":{"deep":${deep},`);
    expect(await faultOf(sealed([header, line]))).toEqual({
      code: 'not-a-record',
      line: 2,
      where: '.fact.deep',
    });
    expect(await faultOf(deep)).toEqual({ code: 'not-a-backup' });
  });

  it('with numbers no clock and no count has is refused', async () => {
    for (const [wanted, put] of [
      ['.sequence', '"sequence":1e999'],
      ['.sequence', '"sequence":0'],
      ['.sequence', '"sequence":1.5'],
      ['.sequence', '"sequence":9007199254740993'],
    ] as const) {
      const line = recordLine(first).replace('"sequence":1', put);
      expect(await faultOf(sealed([header, line]))).toEqual({ code: 'not-a-record', line: 2, where: wanted });
    }
    const { stamp } = first;
    for (const wallMs of [-1, 1e18, 0.5]) {
      const fault = await faultOfRecord({ ...first, stamp: { ...stamp, wallMs } });
      expect(fault).toEqual({ code: 'not-a-record', line: 2, where: '.stamp.wallMs' });
    }
  });

  it('with a number beyond all numbers where any number may be is refused', async () => {
    const line = recordLine({ ...first, stream: 'demo:9', fact: { kind: 'clock-set', byMs: 7 } });
    expect(await faultOf(sealed([header, line.replace('"byMs":7', '"byMs":1e999')]))).toEqual({
      code: 'not-a-record',
      line: 2,
      where: '.fact.byMs',
    });
  });

  it('with lines out of order or twice is refused as such, the tablets’ order among them', async () => {
    const records = lines.slice(1, -1);
    const twice = [header, ...records.slice(0, 3), records[2]!];
    expect(await faultOf(sealed(twice))).toEqual({ code: 'out-of-order', line: 5 });
    const [one, other] = ['b', 'a'].map((device) => {
      const record = { ...first, device };
      return recordLine({ ...record, chain: chainOf(record, 0) });
    });
    expect(await faultOf(sealed([header, one!, other!]))).toEqual({ code: 'out-of-order', line: 3 });
  });

  it('with a byte order mark, which a program put before a line, is refused', async () => {
    const records = lines.slice(1, -1);
    const marked = [header, `\uFEFF${records[0]}`, ...records.slice(1)];
    expect(await faultOf(sealed(marked))).toEqual({ code: 'not-json', line: 2 });
    expect(await faultOf(`\uFEFF${lines.join('\n')}\n`)).toEqual({ code: 'not-a-backup' });
  });

  it('with the names of an object’s own machinery is refused, and no object is the worse for it', async () => {
    const line = recordLine(first).replace('"fact":{', '"fact":{"__proto__":{"isAdmin":true},');
    expect(await faultOf(sealed([header, line]))).toMatchObject({ code: 'not-a-record' });
    const row =
      `{"study":"a","cycle":1,"element":"b","elementNo":1,"elementClass":"repetitive","work":"manual",
      "placement":"external","unitsPerOccurrence":1,"partsPerCycle":1,"observedMs":1,"ratingPct":100,
      "excluded":null,"allowancePct":0,"allowanceBasis":"normal_time","machineAllowancePct":0,
      "carried":{"__proto__":"x"}}`.replace(/\s*\n\s*/g, '');
    const imported = `{"kind":"study-imported","starts":"study","study":"a","fileName":"b","rows":[${row}]}`;
    const begun = { ...first, stream: 'demo:1' };
    const tabled = recordLine(begun).replace(/"fact":\{.*\},"chain"/, `"fact":${imported},"chain"`);
    expect(await faultOf(sealed([header, tabled]))).toMatchObject({
      where: '.fact.rows.0.carried.__proto__',
    });
    for (const kind of ['__proto__', 'constructor', 'toString', 'hasOwnProperty']) {
      expect(await faultOfRecord({ ...first, fact: { kind } })).toMatchObject({ code: 'unknown-kind', kind });
    }
    expect(({} as { isAdmin?: boolean }).isAdmin).toBeUndefined();
  });

  it('with a device name that would tear a line of the journal or a key is refused', async () => {
    for (const device of ['', 'a b', 'a:1', 'a\nb', 'a\u2028b', 'x'.repeat(65), 7, null]) {
      const fault = await faultOfRecord({ ...first, device });
      expect(fault).toEqual({ code: 'not-a-record', line: 2, where: '.device' });
    }
  });

  it('with a record in a stream that it cannot belong to is refused', async () => {
    const turn = shop.find(({ fact }) => fact.kind === 'turn-started')!;
    const tap = shop.find(({ fact }) => fact.kind === 'part-done')!;
    for (const wrong of [
      { ...turn, stream: 'demo:1' },
      { ...tap, stream: 'shop' },
      { ...first, stream: 'demo:9' },
    ]) {
      expect(await faultOfRecord(wrong)).toEqual({ code: 'not-a-record', line: 2, where: '.stream' });
    }
  });

  it('with a checksum that does not follow is refused, and the record is named', async () => {
    const changed = shop.map((record, place) => (place === 30 ? { ...record, chain: 7 } : record));
    // Record 31 is changed, and record 32 follows from what it was.
    expect(await faultOf(sealed([header, ...changed.map(recordLine)]))).toEqual({
      code: 'record-changed',
      device: 'demo',
      sequence: 31,
    });
    const without = shop.filter((_, place) => place !== 30);
    expect(await faultOf(sealed([header, ...without.map(recordLine)]))).toEqual({
      code: 'record-missing',
      device: 'demo',
      sequence: 31,
    });
  });

  it('that says it holds other records than it does is refused', async () => {
    const all = lines.slice(0, -1);
    expect(await faultOf(sealed(all, { records: 61 }))).toEqual({
      code: 'counts-differ',
      said: 61,
      found: 60,
    });
    expect(await faultOf(sealed(all, { devices: [] }))).toEqual({ code: 'contents-changed' });
    expect(await faultOf(sealed(all, { sha256: '0'.repeat(64) }))).toEqual({ code: 'contents-changed' });
    expect(await faultOf(`${sealed(all)}{}\n`)).toEqual({ code: 'more-after-end', line: 63 });
  });

  it('that was made by a newer release is known for one, whatever else it holds', async () => {
    const newer = JSON.stringify({ format: 'pacewright-backup', version: 2, release: '9.0.0', more: [] });
    expect(await faultOf(sealed([newer, '?']))).toEqual({ code: 'made-by-newer-version', release: '9.0.0' });
    expect(await faultOfRecord({ ...first, fact: { kind: 'lot-closed' } })).toEqual({
      code: 'unknown-kind',
      line: 2,
      kind: 'lot-closed',
      release: '0.1.0',
    });
  });

  it('with a line that never ends is refused before it fills the memory', async () => {
    const piece = new Uint8Array(1 << 20).fill(0x20);
    let sent = 0;
    const stream = () =>
      new ReadableStream<Bytes>({
        pull(controller) {
          controller.enqueue(sent === 0 ? new TextEncoder().encode(`${header}\n`) : piece);
          sent += 1;
        },
      });
    const outcome = await restoreBackup(bench, { format }, { stream });
    expect(outcome).toMatchObject({ reason: 'refused', fault: { code: 'line-too-long', line: 2 } });
    expect(sent).toBeLessThan(LONGEST_LINE_BYTES / piece.length + 10);
  });

  it('is let go as soon as it is refused: the rest of a large file is not read', async () => {
    let isLetGo = false;
    let sent = 0;
    const stream = () =>
      new ReadableStream<Bytes>({
        pull(controller) {
          sent += 1;
          controller.enqueue(new TextEncoder().encode(sent === 1 ? `${header}\n` : 'no record\n'));
        },
        cancel() {
          isLetGo = true;
        },
      });
    const outcome = await restoreBackup(bench, { format }, { stream });
    expect(outcome).toMatchObject({ reason: 'refused', fault: { code: 'not-json', line: 2 } });
    expect(isLetGo).toBe(true);
    expect(sent).toBeLessThan(5);
  });

  it('that the browser cannot read is refused with what the browser says', async () => {
    const stream = () =>
      new ReadableStream<Bytes>({
        pull(controller) {
          controller.error(new DOMException('the disk is gone', 'NotReadableError'));
        },
      });
    expect(await restoreBackup(bench, { format }, { stream })).toEqual({
      ok: false,
      reason: 'refused',
      fault: { code: 'cannot-read', problem: 'NotReadableError: the disk is gone' },
    });
  });
});

/** Puts a value in the place of one of an object's, counted through all levels. */
function putAt(within: Record<string, unknown>, place: number, value: unknown): void {
  const places: [Record<string, unknown>, string][] = [];
  const visit = (each: Record<string, unknown>) => {
    for (const [name, inner] of Object.entries(each)) {
      places.push([each, name]);
      if (typeof inner === 'object' && inner !== null) visit(inner as Record<string, unknown>);
    }
  };
  visit(within);
  const [owner, name] = places[place % places.length]!;
  owner[name] = value;
}
