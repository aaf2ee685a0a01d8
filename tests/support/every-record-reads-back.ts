import { Bench } from '../../src/application/bench';
import type { LogRecord } from '../../src/domain/records/log-record';
import { recordShape } from '../../src/exchange/backup-record-shape';

/**
 * Whatever a verb of the application records in any test must be what a copy is read by: one field more, and no copy of
 * that shop could be made again. The compiler sees a field that a fact lacks, and not one too many that comes along
 * with an object.
 */
function readsBack(records: readonly LogRecord[]): void {
  for (const record of records) {
    const shape = recordShape(JSON.parse(JSON.stringify(record)));
    if (!shape.ok) {
      throw new Error(`no copy could be made of ${JSON.stringify(record.fact)}: ${JSON.stringify(shape)}`);
    }
  }
}

const { record, begin } = Bench.prototype;
Bench.prototype.record = function (...given) {
  const records = record.apply(this, given);
  readsBack(records);
  return records;
};
Bench.prototype.begin = function (...given) {
  const begun = begin.apply(this, given);
  readsBack([begun]);
  return begun;
};
