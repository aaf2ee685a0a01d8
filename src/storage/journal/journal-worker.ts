import { JournalFile, type SyncFile } from './journal-file';
import type { JournalAnswer, JournalRequest } from './journal-message';
import { LateFlush } from './late-flush';

declare const self: DedicatedWorkerGlobalScope;

let journal: JournalFile | null = null;
const flush = new LateFlush(() => journal?.flush());

self.addEventListener('message', ({ data }: MessageEvent<JournalRequest>) => {
  answer(data).catch((error) => say({ id: data.id, problem: `${error.name}: ${error.message}` }));
});

async function answer(request: JournalRequest): Promise<void> {
  const { id } = request;
  flush.mustBeWell();
  if (request.ask === 'open') {
    const folder = await navigator.storage.getDirectory();
    const handle = await folder.getFileHandle(request.fileName, { create: true });
    const file: SyncFile = await handle.createSyncAccessHandle();
    journal = new JournalFile(file);
    say({ id, ownEnd: journal.ownEnd });
  } else if (!journal) {
    throw new Error('the journal is not open');
  } else if (request.ask === 'append') {
    journal.append(request.records, request.device);
    say({ id, ownEnd: journal.ownEnd });
    flush.ask();
  } else if (request.ask === 'since') {
    say({ id, since: journal.since(request.own) });
  } else {
    say({ id, batch: journal.read(request.at) });
  }
}

function say(message: JournalAnswer): void {
  self.postMessage(message);
}
