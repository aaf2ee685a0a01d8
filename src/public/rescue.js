// The page of rescue.html: reads every shelf of the tablet, and hands over one file. It writes to none of them.

import { backupPieces, journalRecord, merged, names } from './rescue-file.js';

const told = document.getElementById('told');
const save = document.getElementById('save');
const share = document.getElementById('share');

function answer(request) {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
}

/** What the database holds; nothing where there is none. It is never made here: an empty one would be in the way. */
async function readDatabase() {
  const opening = indexedDB.open(names.database);
  opening.onupgradeneeded = () => opening.transaction.abort();
  const database = await answer(opening);
  try {
    const device = await answer(database.transaction('tablet').objectStore('tablet').get('device'));
    const records = [];
    for (let after; ; ) {
      const store = database.transaction('records').objectStore('records');
      const batch = await answer(store.getAll(after, 1_000));
      records.push(...batch);
      const last = batch.at(-1);
      if (batch.length < 1_000) return { device, records };
      after = IDBKeyRange.lowerBound([last.device, last.sequence], true);
    }
  } finally {
    database.close();
  }
}

/** What the journal beside the database holds. */
async function readJournal() {
  const folder = await navigator.storage.getDirectory();
  const file = await (await folder.getFileHandle(names.journal)).getFile();
  return (await file.text()).split('\n').map(journalRecord).filter(Boolean);
}

/** What waited to be saved when the page last went away. */
function readReserve() {
  const held = JSON.parse(localStorage.getItem(names.reserve) ?? '[]');
  return Array.isArray(held) ? held : [];
}

/** A shelf that cannot be read is told of; the others are read all the same. */
async function tried(what, read, nothing, problems) {
  try {
    return await read();
  } catch (error) {
    const isMissing = error instanceof DOMException && ['NotFoundError', 'AbortError'].includes(error.name);
    if (!isMissing) problems.push(`${what} could not be read (${error.name}: ${error.message}).`);
    return nothing;
  }
}

async function rescue() {
  const problems = [];
  const database = await tried('The database', readDatabase, { records: [] }, problems);
  const journal = await tried('The journal', readJournal, [], problems);
  const reserve = await tried('The reserve', readReserve, [], problems);
  const records = merged(database.records, journal, reserve);
  const note = problems.join(' ');
  if (records.length === 0) {
    told.textContent = `There is no record in this browser. ${note}`;
    return;
  }
  const now = new Date();
  const device = database.device ?? records[0].device;
  const stamp = {
    run: 'rescue',
    monoMs: performance.now(),
    wallMs: now.getTime(),
    zone: Intl.DateTimeFormat().resolvedOptions().timeZone,
    offsetMin: 0 - now.getTimezoneOffset(),
  };
  const pieces = [...backupPieces(records, { release: 'rescue', device, madeAt: stamp })];
  const day = new Date(stamp.wallMs + stamp.offsetMin * 60_000).toISOString().slice(0, 10);
  const name = `pacewright-${device.replace(/[^\w-]/g, '_')}-${day}-rescued.txt`;
  const file = new File(pieces, name, { type: 'text/plain' });
  told.textContent = `${records.length} ${records.length === 1 ? 'record' : 'records'} found. ${note}`;
  save.hidden = false;
  save.onclick = () => {
    const link = document.createElement('a');
    link.href = URL.createObjectURL(file);
    link.download = name;
    link.click();
    told.textContent = `${records.length} records offered as ${name}.`;
  };
  share.hidden = !navigator.canShare?.({ files: [file] });
  share.onclick = () => navigator.share({ files: [file] }).catch(() => {});
}

rescue().catch((error) => {
  told.textContent = `The records could not be saved (${error.name}: ${error.message}). They have not been deleted.`;
});
