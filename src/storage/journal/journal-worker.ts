import { JournalFile, type SyncFile } from './journal-file';
import type { JournalAnswer, JournalRequest } from './journal-message';

declare const self: DedicatedWorkerGlobalScope;

let journal: JournalFile | null = null;

self.addEventListener('message', ({ data }: MessageEvent<JournalRequest>) => {
  answer(data).catch((error) => say({ id: data.id, problem: `${error.name}: ${error.message}` }));
});

async function answer(request: JournalRequest): Promise<void> {
  const { id } = request;
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
  } else {
    for (const batch of journal.read()) say({ id, ...batch, isLast: false });
    say({ id, records: [], damaged: 0, isLast: true });
  }
}

function say(message: JournalAnswer): void {
  self.postMessage(message);
}
