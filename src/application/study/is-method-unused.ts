import { localDay } from '../../domain/day/local-day';
import { isSameCode } from '../../domain/shop/known-code';
import type { Part } from '../../domain/shop/shop';
import type { Bench } from '../bench';

/** How many of the newest studies are looked through. */
const MOST = 200;

/**
 * Whether the newest method of a part was written today and nothing has been timed or typed under it since: then a
 * word that is mended in it makes no further revision. Of an older one, another tablet may have a study.
 */
export async function isMethodUnused(bench: Bench, { id, code, methods }: Part): Promise<boolean> {
  const method = methods.at(-1);
  if (!method || method.writtenOn !== localDay(bench.clock.now())) return false;
  const starts = await bench.log.readLatestStarts('study', MOST);
  return !starts.some(({ fact }) => {
    if (fact.kind === 'study-started') {
      return fact.part === id && fact.methodRevision === method.revision;
    }
    if (fact.kind !== 'study-imported') return false;
    const { part = '', method_revision = '' } = fact.rows[0]?.carried ?? {};
    return isSameCode(part, code) && method_revision === String(method.revision);
  });
}
