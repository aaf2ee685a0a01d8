import type { Page } from 'playwright-core';
import type { LogRecord } from '../../../src/domain/records/log-record';

/** Everything in the shop's own database, read beside the app, by device and sequence. */
export function readOwnLog(page: Page): Promise<LogRecord[]> {
  return page.evaluate(
    () =>
      new Promise<LogRecord[]>((resolve, reject) => {
        const opening = indexedDB.open('pacewright');
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const database = opening.result;
          const reading = database.transaction('records').objectStore('records').getAll();
          reading.onerror = () => reject(reading.error);
          reading.onsuccess = () => {
            database.close();
            resolve(reading.result);
          };
        };
      }),
  );
}
