import { InMemoryRecordLog } from '../../src/storage/in-memory-record-log';
import { recordLogContract } from './record-log-contract';

recordLogContract('the log in memory', async () => new InMemoryRecordLog('t'));
