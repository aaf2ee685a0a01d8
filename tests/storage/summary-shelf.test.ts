import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { beforeEach, describe, expect, it } from 'vitest';
import type { KeptDay, SummaryShelf } from '../../src/application/ports/summary-shelf';
import { summariseDay } from '../../src/domain/day/summarise-day';
import { InMemorySummaryShelf } from '../../src/storage/summaries/in-memory-summary-shelf';
import { IndexedDbSummaryShelf } from '../../src/storage/summaries/indexeddb-summary-shelf';

const kept = (day: string, ...turns: string[]): KeptDay => ({
  day,
  turns,
  summary: summariseDay(day, [], null),
});
const days = async (shelf: SummaryShelf) =>
  (await shelf.readDays('2026-01-01', '2026-12-31')).map(({ day }) => day);

beforeEach(() => {
  globalThis.indexedDB = new IDBFactory();
});

const shelves: Record<string, () => Promise<SummaryShelf>> = {
  'in memory': async () => new InMemorySummaryShelf(),
  'on IndexedDB': () => IndexedDbSummaryShelf.open('summaries', '1'),
};

for (const [name, open] of Object.entries(shelves)) {
  describe(`a shelf of summaries ${name}`, () => {
    it('gives the days of a span back, oldest first, ends included, as they were kept', async () => {
      const shelf = await open();
      const third = kept('2026-03-03', 't:9');
      await shelf.keep([kept('2026-03-04'), third, kept('2026-03-02'), kept('2026-03-05')]);
      const found = await shelf.readDays('2026-03-03', '2026-03-04');
      expect(found.map(({ day }) => day)).toEqual(['2026-03-03', '2026-03-04']);
      expect(found[0]).toEqual(third);
    });

    it('drops the days that a turn lies in, and no other', async () => {
      const shelf = await open();
      await shelf.keep([kept('2026-03-02', 't:1', 't:5'), kept('2026-03-03', 't:9')]);
      await shelf.dropTurns(['t:5', 'shop'], { sequence: 12, terms: 'a' });
      expect(await days(shelf)).toEqual(['2026-03-03']);
      expect(await shelf.readMark()).toEqual({ sequence: 12, terms: 'a' });
    });

    it('is empty after it was cleared, with the new mark or without one', async () => {
      const shelf = await open();
      expect(await shelf.readMark()).toBeNull();
      await shelf.keep([kept('2026-03-02')]);
      await shelf.clear({ sequence: 3, terms: 'b' });
      expect([await days(shelf), await shelf.readMark()]).toEqual([[], { sequence: 3, terms: 'b' }]);
      await shelf.clear(null);
      expect(await shelf.readMark()).toBeNull();
    });

    it('replaces a day that is kept again', async () => {
      const shelf = await open();
      await shelf.keep([kept('2026-03-02', 't:1')]);
      await shelf.keep([kept('2026-03-02', 't:7')]);
      expect((await shelf.readDays('2026-03-02', '2026-03-02')).map(({ turns }) => turns)).toEqual([['t:7']]);
    });
  });
}

describe('a shelf of summaries of another release', () => {
  it('has no mark, so that nothing on it is trusted: a formula may be another', async () => {
    const older = await IndexedDbSummaryShelf.open('summaries', '1');
    await older.clear({ sequence: 7, terms: 'a' });
    expect(await (await IndexedDbSummaryShelf.open('summaries', '1')).readMark()).toEqual({
      sequence: 7,
      terms: 'a',
    });
    expect(await (await IndexedDbSummaryShelf.open('summaries', '2')).readMark()).toBeNull();
  });
});
