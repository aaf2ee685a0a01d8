import { parseArgs } from 'node:util';
import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import fc from 'fast-check';
import { planRestore } from '../src/application/backup/plan-restore';
import { demoRecords } from '../src/demo/demo-records';
import { chainOf } from '../src/domain/records/chain';
import type { Fact, LogRecord } from '../src/domain/records/log-record';
import { backupFormat } from '../src/exchange/backup-format';
import { InMemoryRecordLog } from '../src/storage/in-memory-record-log';
import { about, backupOf, quickSecrets, sourceOf } from '../tests/support/backup-files';

type Bytes = Uint8Array<ArrayBuffer>;

const format = backupFormat(quickSecrets());
const inHand = { part: 'tablet-1:1', partCode: 'M', targetMs: 90_800 };

/**
 * Writes and reads a backup of many records as a stream, and tells how much memory that held; then damages a
 * backup again and again. Gives the exit status: 0, or 1 when memory grew or a damaged file was taken.
 *
 * @param argv `--records 1000000 --files 100000`
 */
export async function proveBackupCommand(argv: string[]): Promise<number> {
  const { values } = parseArgs({
    args: argv,
    options: {
      records: { type: 'string', default: '1000000' },
      files: { type: 'string', default: '100000' },
    },
  });
  const small = await measured(10_000);
  const large = await measured(Number(values.records));
  process.stdout.write(`${[small, large].map((each) => each.line).join('\n')}\n`);
  const grewMb = large.peakMb - small.peakMb;
  // Under collection after every hundredth batch, what is held is what is needed.
  process.stdout.write(`Memory held grew by ${grewMb.toFixed(1)} MB.\n`);
  const taken = await takenThoughDamaged(Number(values.files));
  process.stdout.write(`${values.files} damaged files: ${taken} taken.\n`);
  return grewMb < 16 && taken === 0 ? 0 : 1;
}

async function measured(count: number): Promise<{ line: string; peakMb: number }> {
  setFlagsFromString('--expose-gc');
  const collect: () => void = runInNewContext('gc');
  let peak = 0;
  let batches = 0;
  const watch = () => {
    batches += 1;
    if (batches % 100 !== 1) return;
    collect();
    const { heapUsed, arrayBuffers } = process.memoryUsage();
    peak = Math.max(peak, heapUsed + arrayBuffers);
  };
  let bytes = 0;
  const began = performance.now();
  const pieces = format.write(shopOf(count, watch), about, 'three blunt drills').chunks;
  const chunks = pieces[Symbol.asyncIterator]();
  const stream = () =>
    new ReadableStream<Bytes>({
      async pull(controller) {
        const { done, value } = await chunks.next();
        if (done) controller.close();
        else {
          bytes += value.length;
          controller.enqueue(value);
        }
      },
    });
  const planned = await planRestore(
    new InMemoryRecordLog('own'),
    { format },
    { stream },
    'three blunt drills',
  );
  if (!planned.ok || planned.plan.added !== count) throw new Error('the file is not what was written');
  const seconds = (performance.now() - began) / 1_000;
  const mb = (size: number) => (size / 1e6).toFixed(1);
  return {
    line: `${count} records, ${mb(bytes)} MB: written, locked, unlocked, checked and compared in ${seconds.toFixed(1)} s, at most ${mb(peak)} MB held.`,
    peakMb: peak / 1e6,
  };
}

/** Turns of sixty records each, chained, a thousand records at a time; none is kept. */
async function* shopOf(count: number, eachBatch: () => void): AsyncGenerator<LogRecord[]> {
  let chain = 0;
  let batch: LogRecord[] = [];
  for (let place = 0; place < count; place += 1) {
    const device = 'tablet-1';
    const sequence = place + 1;
    const fact: Fact =
      place % 60 === 0
        ? { kind: 'turn-started', starts: 'turn', person: 'K7', ...inHand }
        : { kind: 'part-done', ...inHand };
    const stamp = { ...about.madeAt, monoMs: place * 1_000, wallMs: about.madeAt.wallMs + place * 1_000 };
    const record = { device, sequence, stream: `${device}:${sequence - (place % 60)}`, stamp, fact };
    chain = chainOf(record, chain);
    batch.push({ ...record, chain });
    if (batch.length < 1_000 && sequence < count) continue;
    yield batch;
    batch = [];
    eachBatch();
  }
}

/** How many files are taken though a bit was turned over, a stretch was lost, or one was put elsewhere. */
async function takenThoughDamaged(files: number): Promise<number> {
  const shop = demoRecords().slice(0, 60);
  const wholes = [await backupOf(format, shop), await backupOf(format, shop, 'three blunt drills')];
  let taken = 0;
  const place = fc.double({ min: 0, max: 1, maxExcluded: true, noNaN: true });
  await fc.assert(
    fc.asyncProperty(fc.constantFrom(...wholes), place, place, fc.nat(9), async (whole, from, to, how) => {
      const [start, end] = [from, to].map((each) => Math.floor(each * whole.length)).sort((a, b) => a - b);
      const damaged = damage(whole, start!, end!, how);
      if (Buffer.compare(damaged, whole) === 0) return;
      const reading = await format.read(sourceOf(damaged), { passphrase: 'three blunt drills' });
      if (reading.ok) taken += 1;
    }),
    { numRuns: files },
  );
  return taken;
}

function damage(whole: Bytes, start: number, end: number, how: number): Bytes {
  if (how < 8) {
    const other = whole.slice();
    other[start]! ^= 1 << how;
    return other;
  }
  const [head, middle, tail] = [whole.slice(0, start), whole.slice(start, end), whole.slice(end)];
  return new Uint8Array(Buffer.concat(how === 8 ? [head, tail] : [middle, head, tail]));
}
