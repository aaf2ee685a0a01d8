/** A record of the size of most: a part done. */
export const sampleRecord = {
  device: 'tablet-1abcd2e',
  sequence: 1,
  stream: 'tablet-1abcd2e:3',
  stamp: { run: 'run-1abcd2e', monoMs: 123456, wallMs: 1774000000000, zone: 'Europe/Berlin', offsetMin: 60 },
  fact: { kind: 'part-done', part: 'tablet-1abcd2e:1', partCode: 'M', targetMs: 90000 },
  chain: 3421780262,
};

/**
 * Fills the app's log in this page with turns of another tablet, 300 records each, one turn a working day: they
 * make the log large and leave this tablet's own records alone.
 */
export async function fillLog(page, count) {
  await page.evaluate(
    async ({ total, record }) => {
      const opening = indexedDB.open('pacewright');
      const database = await new Promise((resolve) => {
        opening.onsuccess = () => resolve(opening.result);
      });
      for (let from = 1; from <= total; from += 10_000) {
        const transaction = database.transaction('records', 'readwrite', { durability: 'relaxed' });
        const store = transaction.objectStore('records');
        for (let sequence = from; sequence < from + 10_000 && sequence <= total; sequence += 1) {
          const turn = Math.ceil(sequence / 300) * 300 - 299;
          const day = (turn - 1) / 300;
          const place = sequence - turn;
          store.add({
            ...record,
            device: 'older',
            sequence,
            stream: `older:${turn}`,
            stamp: {
              ...record.stamp,
              run: `run-${day}`,
              monoMs: place * 90_000,
              wallMs: 1_500_000_000_000 + day * 86_400_000 + place * 90_000,
            },
            fact:
              place === 0
                ? {
                    kind: 'turn-started',
                    starts: 'turn',
                    person: 'K7',
                    part: 'p',
                    partCode: 'M',
                    targetMs: 90000,
                  }
                : place === 299
                  ? { kind: 'turn-ended' }
                  : record.fact,
          });
        }
        await new Promise((resolve, reject) => {
          transaction.oncomplete = resolve;
          transaction.onabort = () => reject(transaction.error);
        });
      }
      database.close();
    },
    { total: count, record: sampleRecord },
  );
}
