import type { LogRecord } from '../domain/records/log-record';
import type { JournalBatch } from './journal/journal-file';
import type { OwnEnd, OwnPlace } from './journal/journal-line';
import type { JournalAnswer, JournalRequest } from './journal/journal-message';
import { within } from './within';

/** The second shelf as the page sees it. */
export interface Journal {
  /** The last of the tablet's own records in the journal; null when it is empty. */
  readonly ownEnd: OwnEnd | null;
  append(records: readonly LogRecord[], device: string): Promise<void>;
  /**
   * The records written after the tablet's own one of this number, oldest first. Null where the end of the
   * journal does not reach back so far.
   */
  since(own: OwnPlace): Promise<readonly LogRecord[] | null>;
  /** Everything that can be read, a batch at a time, so that a large journal is never in memory whole. */
  readAll(): AsyncIterable<JournalBatch>;
  close(): void;
}

type Unnumbered<Request> = Request extends unknown ? Omit<Request, 'id'> : never;
type Ask = (request: Unnumbered<JournalRequest>) => Promise<JournalAnswer>;

/** A worker that has not written by then is taken for dead: a flush takes 10 ms where it is slow. */
const PATIENCE_MS = 5_000;
const PATIENCE_MS_A_RECORD = 2;

/** A worker that was begun ahead and has no file yet. */
let begun: Worker | null = null;

/**
 * Begins the worker that the next opening takes: it starts while the page still waits for its lock. It touches no file
 * before it is asked to.
 */
export function prepareJournal(): void {
  begun = journalWorker();
}

function journalWorker(): Worker {
  return new Worker(new URL('./journal/journal-worker.ts', import.meta.url), { type: 'module' });
}

/**
 * Opens the journal file in the origin's private file system, in a worker: only there may a file be written
 * and flushed in one go. Rejects where the browser has no such file, or another tab holds it.
 *
 * Must never ask a worker again that has failed to write: it is let go, and the next record opens another.
 */
export async function openJournal(fileName: string): Promise<Journal> {
  let worker: Worker | null = null;
  let ownEnd: OwnEnd | null = null;
  let open: Promise<Ask> | null = null;
  /** The same once it is open: a line goes to the worker in the tap's own turn, before anything is drawn. */
  let atHand: Ask | null = null;
  /** Another tab may hold the file by now. */
  let isOver = false;

  const noteEnd = (answer: JournalAnswer) => {
    if ('ownEnd' in answer) ownEnd = answer.ownEnd;
  };
  const drop = () => {
    worker?.terminate();
    open = null;
    atHand = null;
  };
  const reach = async () => {
    worker = begun ?? journalWorker();
    begun = null;
    const ask = asking(worker);
    noteEnd(await ask({ ask: 'open', fileName }));
    atHand = ask;
    return ask;
  };
  const ask = async (request: Unnumbered<JournalRequest>, patienceMs: number) => {
    if (isOver) throw new Error('the journal is closed');
    try {
      if (atHand) return await within(patienceMs, atHand(request));
      open ??= reach();
      return await within(patienceMs, (await open)(request));
    } catch (error) {
      drop();
      throw error;
    }
  };
  open = reach();
  await open.catch((error) => {
    drop();
    throw error;
  });
  return {
    get ownEnd() {
      return ownEnd;
    },
    append: async (records, device) =>
      noteEnd(
        await ask({ ask: 'append', records, device }, PATIENCE_MS + PATIENCE_MS_A_RECORD * records.length),
      ),
    async since(own) {
      const answer = await ask({ ask: 'since', own }, PATIENCE_MS);
      return 'since' in answer ? answer.since : null;
    },
    async *readAll() {
      for (let at: number | null = 0; at !== null; ) {
        const answer: JournalAnswer = await ask({ ask: 'read', at }, PATIENCE_MS);
        if (!('batch' in answer)) return;
        yield answer.batch;
        at = answer.batch.next;
      }
    },
    close() {
      isOver = true;
      drop();
    },
  };
}

/** Questions to a worker and its answers, told apart by their number. */
function asking(worker: Worker): Ask {
  const waiting = new Map<number, (answer: JournalAnswer) => void>();
  let asked = 0;
  worker.addEventListener('message', ({ data }: MessageEvent<JournalAnswer>) => waiting.get(data.id)?.(data));
  worker.addEventListener('error', () => {
    for (const [id, tell] of waiting) tell({ id, problem: 'the journal’s worker stopped' });
  });
  return (request) =>
    new Promise((resolve, reject) => {
      asked += 1;
      const id = asked;
      waiting.set(id, (answer) => {
        waiting.delete(id);
        if ('problem' in answer) reject(new Error(answer.problem));
        else resolve(answer);
      });
      worker.postMessage({ ...request, id });
    });
}
