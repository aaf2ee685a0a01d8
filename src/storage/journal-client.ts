import type { LogRecord } from '../domain/records/log-record';
import type { OwnEnd } from './journal/journal-line';
import type { JournalAnswer, JournalRequest } from './journal/journal-message';

/** The second shelf as the page sees it. */
export interface Journal {
  /** How far the tablet's own records go in the journal; null when it is empty. */
  readonly ownEnd: OwnEnd | null;
  append(records: readonly LogRecord[], device: string): Promise<void>;
  readAll(): Promise<{ records: LogRecord[]; damaged: number }>;
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

  const ask = (request: Unnumbered<JournalRequest>, onBatch?: (answer: JournalAnswer) => void) =>
    new Promise<void>((resolve, reject) => {
      asked += 1;
      const id = asked;
      waiting.set(id, (answer) => {
        onBatch?.(answer);
        if ('isLast' in answer && !answer.isLast) return;
        waiting.delete(id);
        if ('problem' in answer) reject(new Error(answer.problem));
        else {
          if ('ownEnd' in answer) ownEnd = answer.ownEnd;
          resolve();
        }
      });
      worker.postMessage({ ...request, id });
    });

  try {
    await ask({ ask: 'open', fileName });
  } catch (error) {
    worker.terminate();
    throw error;
  }
  return {
    get ownEnd() {
      return ownEnd;
    },
    append: (records, device) => ask({ ask: 'append', records, device }),
    async readAll() {
      const records: LogRecord[] = [];
      let damaged = 0;
      await ask({ ask: 'read' }, (answer) => {
        if (!('records' in answer)) return;
        records.push(...answer.records);
        damaged += answer.damaged;
      });
      return { records, damaged };
    },
    close: () => worker.terminate(),
  };
}
