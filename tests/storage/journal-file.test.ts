import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { LogRecord } from '../../src/domain/records/log-record';
import { JournalFile } from '../../src/storage/journal/journal-file';
import { recordAt } from '../support/records';
import { ArrayFile, contentOf, journalOn } from './in-memory-journal';

const record = (sequence: number, person = 'K7', device = 't'): LogRecord =>
  recordAt(
    sequence,
    sequence * 1_000,
    `${device}:1`,
    { kind: 'turn-started', starts: 'turn', person, part: 'p', partCode: 'M', targetMs: null },
    { device },
  );

describe('the journal file', () => {
  it('gives back any record, whatever its texts hold', async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(fc.string({ unit: 'binary' }), { maxLength: 8 }), async (people) => {
        const file = new ArrayFile();
        const records = people.map((person, place) => record(place + 1, person));
        for (const each of records) new JournalFile(file).append([each], 't');
        expect(await contentOf(journalOn(file))).toEqual({ records, damaged: 0 });
      }),
    );
  });

  it('knows after reopening how far the tablet’s own records go, also behind those of another', () => {
    const file = new ArrayFile();
    new JournalFile(file).append([record(1), record(2), record(7, 'R4', 'other')], 't');
    expect(new JournalFile(file).ownEnd).toEqual({ device: 't', sequence: 2, chain: 0 });
    expect(new JournalFile(new ArrayFile()).ownEnd).toBeNull();
  });

  it('has written what was appended when it returns, and flushes at once where another tablet’s records are among it', () => {
    const file = new ArrayFile();
    const journal = new JournalFile(file);
    const before = file.flushes;
    journal.append([record(1)], 't');
    expect(new JournalFile(file).ownEnd).toEqual({ device: 't', sequence: 1, chain: 0 });
    expect(file.flushes).toBe(before);
    journal.append([record(2), record(3, 'R4', 'other')], 't');
    expect(file.flushes).toBe(before + 1);
    journal.flush();
    expect(file.flushes).toBe(before + 2);
  });

  it('cut anywhere inside its last line, loses that line only and goes on behind the one before', async () => {
    const file = new ArrayFile();
    new JournalFile(file).append([record(1)], 't');
    const whole = file.bytes.length;
    new JournalFile(file).append([record(2)], 't');
    const full = file.bytes;
    for (let cut = whole; cut < full.length; cut += 1) {
      const torn = new ArrayFile();
      torn.bytes = full.slice(0, cut);
      const journal = new JournalFile(torn);
      expect(journal.ownEnd).toEqual({ device: 't', sequence: 1, chain: 0 });
      journal.append([record(2, 'again')], 't');
      expect(await contentOf(journalOn(torn))).toEqual({
        records: [record(1), record(2, 'again')],
        damaged: 0,
      });
    }
  });

  it('with any one byte changed, never gives back a record that was not written', async () => {
    const file = new ArrayFile();
    new JournalFile(file).append([record(1), record(2), record(3)], 't');
    const written = [record(1), record(2), record(3)].map((each) => JSON.stringify(each));
    await fc.assert(
      fc.asyncProperty(
        fc.nat(file.bytes.length - 1),
        fc.integer({ min: 1, max: 255 }),
        async (place, change) => {
          const damaged = new ArrayFile();
          damaged.bytes = file.bytes.slice();
          damaged.bytes[place]! ^= change;
          const { records } = await contentOf(journalOn(damaged));
          expect(records.length).toBeGreaterThanOrEqual(1);
          for (const each of records) expect(written).toContain(JSON.stringify(each));
        },
      ),
      { numRuns: 2_000 },
    );
  });
});
