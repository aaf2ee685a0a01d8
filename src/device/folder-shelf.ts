/** DO NOT RENAME. A shop's choice of a folder lies under these names. */
const DATABASE = 'pacewright-folder';
const STORE = 'folder';
const KEY = 'chosen';

/**
 * Keeps the handle of the chosen folder, which only a database can hold. It has one of its own, so that the
 * log's is never opened for it. What is lost with it is a choice, made again by a tap.
 */
export const folderShelf = {
  read: () => request<FileSystemDirectoryHandle | undefined>('readonly', (store) => store.get(KEY)),
  keep: (handle: FileSystemDirectoryHandle) => request('readwrite', (store) => store.put(handle, KEY)),
  forget: () => request('readwrite', (store) => store.delete(KEY)),
};

async function request<Result>(
  mode: IDBTransactionMode,
  ask: (store: IDBObjectStore) => IDBRequest<Result>,
): Promise<Result> {
  const database = await opened();
  try {
    return await new Promise((resolve, reject) => {
      const transaction = database.transaction(STORE, mode, { durability: 'strict' });
      const asked = ask(transaction.objectStore(STORE));
      transaction.oncomplete = () => resolve(asked.result);
      transaction.onabort = () => reject(transaction.error);
    });
  } finally {
    database.close();
  }
}

function opened(): Promise<IDBDatabase> {
  return new Promise((resolve, reject) => {
    const asked = indexedDB.open(DATABASE, 1);
    asked.onupgradeneeded = () => asked.result.createObjectStore(STORE);
    asked.onsuccess = () => resolve(asked.result);
    asked.onerror = () => reject(asked.error);
  });
}
