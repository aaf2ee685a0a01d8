import { describe, expect, it, vi } from 'vitest';
import type { LogRecord } from '../../src/domain/records/log-record';
import { openJournal, prepareJournal } from '../../src/storage/journal-client';
import { contentOf } from '../storage/in-memory-journal';
import { recordAt } from '../support/records';

const done = { kind: 'part-done', part: 'p', partCode: 'M', targetMs: null } as const;
const record = (sequence: number): LogRecord => recordAt(sequence, sequence * 1_000, 't:1', done);

/** A worker that was let go gives its file back a little later. */
async function reopened(name: string) {
  for (let tries = 0; ; tries += 1) {
    try {
      return await openJournal(name);
    } catch (error) {
      if (tries === 50) throw error;
      await new Promise((resolve) => setTimeout(resolve, 20));
    }
  }
}

/** Every worker that is made from now on. */
function countedWorkers(): Worker[] {
  const workers: Worker[] = [];
  const { Worker: Real } = globalThis;
  vi.stubGlobal(
    'Worker',
    class extends Real {
      constructor(...given: ConstructorParameters<typeof Real>) {
        super(...given);
        workers.push(this);
      }
    },
  );
  return workers;
}

describe('the journal in the browser’s private file system', () => {
  it('keeps what was appended when its worker is gone', async () => {
    const journal = await openJournal('first-test');
    expect(journal.ownEnd).toBeNull();
    await journal.append([record(1), record(2)], 't');
    await journal.append([record(3)], 't');
    expect(journal.ownEnd).toEqual({ device: 't', sequence: 3, chain: 0 });
    journal.close();
    const again = await reopened('first-test');
    expect(again.ownEnd).toEqual({ device: 't', sequence: 3, chain: 0 });
    expect(await contentOf(again)).toEqual({ records: [record(1), record(2), record(3)], damaged: 0 });
    again.close();
  });

  it('is held by one page only', async () => {
    const journal = await openJournal('second-test');
    await expect(openJournal('second-test')).rejects.toThrow();
    journal.close();
  });

  it('is opened by the worker that was begun ahead, once', async () => {
    const workers = countedWorkers();
    prepareJournal();
    const journal = await openJournal('fifth-test');
    expect(workers).toHaveLength(1);
    const another = await openJournal('sixth-test');
    expect(workers).toHaveLength(2);
    await Promise.all([journal.append([record(1)], 't'), another.append([record(2)], 't')]);
    expect([journal.ownEnd?.sequence, another.ownEnd?.sequence]).toEqual([1, 2]);
    journal.close();
    another.close();
    vi.unstubAllGlobals();
  });

  it('is opened anew by the next record when its worker has died, and by none once it was closed', async () => {
    const workers = countedWorkers();
    const journal = await openJournal('fourth-test');
    await journal.append([record(1)], 't');
    workers[0]!.dispatchEvent(new Event('error'));
    workers[0]!.terminate();
    // What was asked of the dead one is said to be not written; what comes after goes to another.
    const unanswered = journal.append([record(2)], 't');
    await expect(unanswered).rejects.toThrow('no answer');
    await vi.waitFor(() => journal.append([record(2)], 't'), { timeout: 5_000, interval: 50 });
    expect(await contentOf(journal)).toEqual({ records: [record(1), record(2)], damaged: 0 });
    journal.close();
    const opened = workers.length;
    await expect(journal.append([record(3)], 't')).rejects.toThrow('closed');
    expect(workers).toHaveLength(opened);
    vi.unstubAllGlobals();
  });

  it('reads back more records than one batch holds', async () => {
    const journal = await openJournal('third-test');
    const many = Array.from({ length: 5_000 }, (_, place) => record(place + 1));
    await journal.append(many, 't');
    expect((await contentOf(journal)).records).toEqual(many);
    journal.close();
  });
});
