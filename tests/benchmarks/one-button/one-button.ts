import type { LogRecord } from '../../../src/domain/records/log-record';
import { recordKey } from '../../../src/domain/records/record-key';
import { foldTurn } from '../../../src/domain/turn/fold-turn';
import { IndexedDbRecordLog } from '../../../src/storage/indexeddb-record-log';
import { openJournal } from '../../../src/storage/journal-client';
import { TwoShelfRecordLog } from '../../../src/storage/two-shelf-record-log';

/** One button on the app's own log: it reads the turn in hand, counts its parts, and takes a tap. */
navigator.serviceWorker.register('sw.js');
const journal = await openJournal('one-button');
const database = await IndexedDbRecordLog.open('one-button', () => journal.ownEnd?.device ?? 'one-button');
const { log } = await TwoShelfRecordLog.open(database, journal);
Object.assign(globalThis, { fill: (records: LogRecord[]) => log.append(records) });

const [start] = await log.readLatestStarts('turn', 1);
if (start) {
  const turn = foldTurn(await log.readStream(recordKey(start)));
  const button = document.createElement('button');
  button.id = 'tap';
  button.style.cssText = 'width:600px;height:300px';
  let { length } = turn.cycles;
  let sequence = (await log.lastRecord())?.sequence ?? 0;
  button.textContent = String(length);
  button.addEventListener('pointerdown', () => {
    length += 1;
    sequence += 1;
    button.textContent = String(length);
    log.append([{ ...start, device: log.device, sequence, fact: { kind: 'stopped' } }]);
  });
  document.body.append(button);
}
