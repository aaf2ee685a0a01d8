import { foldStudy } from '../../domain/study/fold-study';
import type { Study } from '../../domain/study/study';
import type { Bench } from '../bench';

/** A study from the log; null when the log has none of that name. */
export async function readStudy(bench: Bench, id: string): Promise<Study | null> {
  const records = await bench.log.readStream(id);
  return records.length > 0 ? foldStudy(records) : null;
}
