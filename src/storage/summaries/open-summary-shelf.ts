import type { SummaryShelf } from '../../application/ports/summary-shelf';
import { DEMO_SUMMARIES, OWN_SUMMARIES } from '../database-names';
import { InMemorySummaryShelf } from './in-memory-summary-shelf';
import { IndexedDbSummaryShelf } from './indexeddb-summary-shelf';

const open = new Map<string, Promise<SummaryShelf>>();

/** One shelf a page: whoever asks again gets the same. A browser that refuses a database has one until it reloads. */
export function openSummaryShelf(whose: 'own' | 'demo' | 'none', release: string): Promise<SummaryShelf> {
  const known = open.get(whose) ?? opened(whose, release);
  open.set(whose, known);
  return known;
}

async function opened(whose: 'own' | 'demo' | 'none', release: string): Promise<SummaryShelf> {
  if (whose === 'none') return new InMemorySummaryShelf();
  const name = whose === 'demo' ? DEMO_SUMMARIES : OWN_SUMMARIES;
  return IndexedDbSummaryShelf.open(name, release).catch(() => new InMemorySummaryShelf());
}
