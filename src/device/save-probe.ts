/** Beside the records' own database, and never deleted: one entry, written over and over. */
const DATABASE = 'pacewright-probe';
const STORE = 'probe';
/** As long as a record of a part that is done. */
const SAMPLE = 'x'.repeat(350);

/** Times strict writes as a tap waits for them: from asking until the transaction is complete. Milliseconds. */
export async function saveTimes(count: number): Promise<readonly number[]> {
  const database = await opened();
  try {
    const times: number[] = [];
    while (times.length < count) times.push(await timeOne(database));
    return times;
  } finally {
    database.close();
  }
}

function timeOne(database: IDBDatabase): Promise<number> {
  const from = performance.now();
  return new Promise((resolve, reject) => {
    const transaction = database.transaction(STORE, 'readwrite', { durability: 'strict' });
    transaction.objectStore(STORE).put(SAMPLE, 'sample');
    transaction.oncomplete = () => resolve(performance.now() - from);
    transaction.onabort = () => reject(transaction.error);
  });
}

function opened(): Promise<IDBDatabase> {
  return new Promise((resolve, reject) => {
    const asked = indexedDB.open(DATABASE, 1);
    asked.onupgradeneeded = () => asked.result.createObjectStore(STORE);
    asked.onsuccess = () => resolve(asked.result);
    asked.onerror = () => reject(asked.error);
  });
}
