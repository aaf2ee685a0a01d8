import type { LogRecord } from '../domain/records/log-record';
import { InMemoryRecordLog } from './in-memory-record-log';

/**
 * Stands where the log would be while that does not open: it has nothing and takes nothing, so that all that is
 * recorded is said to be not saved, and lies in the reserve.
 */
export class UnopenedRecordLog extends InMemoryRecordLog {
  override async append(_records: readonly LogRecord[]): Promise<void> {
    throw new DOMException('the records are not open', 'NotReadableError');
  }
}
