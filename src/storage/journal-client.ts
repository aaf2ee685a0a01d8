import type { LogRecord } from '../domain/records/log-record';
import type { JournalBatch } from './journal/journal-file';
import type { OwnEnd } from './journal/journal-line';
import type { JournalAnswer, JournalRequest } from './journal/journal-message';

/** The second shelf as the page sees it. */
export interface Journal {
  /** How far the tablet's own records go in the journal; null when it is empty. */
  readonly ownEnd: OwnEnd | null;
  append(records: readonly LogRecord[], device: string): Promise<void>;
  /**
   * The records written after the tablet's own one of this number, oldest first. Null where the end of the
   * journal does not reach back so far.
   */
  since(own: OwnEnd): Promise<readonly LogRecord[] | null>;
  /** Everything that can be read, a batch at a time, so that a large journal is never in memory whole. */
  readAll(): AsyncIterable<JournalBatch>;
  close(): void;
}

type Unnumbered<Request> = Request extends unknown ? Omit<Request, 'id'> : never;

/**
 * Opens the journal file in the origin's private file system, in a worker: only there may a file be written
 * and flushed in one go. Rejects where the browser has no such file, or another tab holds it.
 */
export async function openJournal(fileName: string): Promise<Journal> {
  const worker = new Worker(new URL('./journal/journal-worker.ts', import.meta.url), { type: 'module' });
  const waiting = new Map<number, (answer: JournalAnswer) => void>();
  let asked = 0;
  let ownEnd: OwnEnd | null = null;

  worker.addEventListener('message', ({ data }: MessageEvent<JournalAnswer>) => waiting.get(data.id)?.(data));
  worker.addEventListener('error', () => {
    for (const [id, tell] of waiting) tell({ id, problem: 'the journal’s worker stopped' });
  });

  const ask = (request: Unnumbered<JournalRequest>) =>
    new Promise<JournalAnswer>((resolve, reject) => {
      asked += 1;
      const id = asked;
      waiting.set(id, (answer) => {
        waiting.delete(id);
        if ('problem' in answer) reject(new Error(answer.problem));
        else resolve(answer);
      });
      worker.postMessage({ ...request, id });
    });
  const noteEnd = (answer: JournalAnswer) => {
    if ('ownEnd' in answer) ownEnd = answer.ownEnd;
  };

  try {
    noteEnd(await ask({ ask: 'open', fileName }));
  } catch (error) {
    worker.terminate();
    throw error;
  }
  return {
    get ownEnd() {
      return ownEnd;
    },
    append: async (records, device) => noteEnd(await ask({ ask: 'append', records, device })),
    async since(own) {
      const answer = await ask({ ask: 'since', own });
      return 'since' in answer ? answer.since : null;
    },
    async *readAll() {
      for (let at: number | null = 0; at !== null; ) {
        const answer: JournalAnswer = await ask({ ask: 'read', at });
        if (!('batch' in answer)) return;
        yield answer.batch;
        at = answer.batch.next;
      }
    },
    close: () => worker.terminate(),
  };
}
