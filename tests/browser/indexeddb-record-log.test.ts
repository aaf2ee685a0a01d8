import { IndexedDbRecordLog } from '../../src/storage/indexeddb-record-log';
import { recordLogContract } from '../storage/record-log-contract';

let opened = 0;

recordLogContract('the log on the browser’s own IndexedDB', () => {
  opened += 1;
  return IndexedDbRecordLog.open(`contract-${opened}`, () => 't');
});
