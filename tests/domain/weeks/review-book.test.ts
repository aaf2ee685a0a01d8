import { describe, expect, it } from 'vitest';
import type { ReviewFact } from '../../../src/domain/records/review-fact';
import { foldReviewBook, setUpStandardAt } from '../../../src/domain/weeks/review-book';
import { MORNING_MS, recordAt } from '../../support/records';

const written = (...facts: ReviewFact[]) =>
  facts.map((fact, place) => recordAt(place + 1, place * 1_000, 'shop', fact));
const note = (text: string): ReviewFact => ({
  kind: 'day-noted',
  day: '2026-03-02',
  text,
  isChange: false,
  by: 'FM',
});

describe('the foreman’s book', () => {
  it('has what was written, in order, each with who and when', () => {
    const { notes } = foldReviewBook(written(note('Blade changed'), note('Fire drill')));
    expect(notes.map(({ text, key, by, at }) => [text, key, by, at.wallMs])).toEqual([
      ['Blade changed', 't:1', 'FM', MORNING_MS],
      ['Fire drill', 't:2', 'FM', MORNING_MS + 1_000],
    ]);
  });

  it('has no note that was taken away, also when its removal came before it in the file', () => {
    const records = written(note('Wrong day'), { kind: 'day-note-removed', note: 't:1', by: 'FM' });
    expect(foldReviewBook(records.reverse()).notes).toEqual([]);
  });

  it('keeps a quotation that was taken back, with who did and when; one that nobody made is none', () => {
    const made: ReviewFact = {
      kind: 'quotation-made',
      part: 'p',
      partCode: 'M',
      quantity: 100,
      setUpMs: 0,
      perPartMs: 90_000,
      totalMs: 9_000_000,
      lowMs: null,
      highMs: null,
      methodRevision: null,
      study: null,
      note: '',
      by: 'FM',
    };
    const { quotations } = foldReviewBook(
      written(
        made,
        { ...made, quantity: 200 },
        { kind: 'quotation-withdrawn', quotation: 't:1', by: 'F2' },
        { kind: 'quotation-withdrawn', quotation: 't:9', by: 'F2' },
      ),
    );
    expect(
      quotations.map(({ quantity, withdrawn }) => [quantity, withdrawn?.by, withdrawn?.at.wallMs]),
    ).toEqual([
      [100, 'F2', MORNING_MS + 2_000],
      [200, undefined, undefined],
    ]);
  });

  it('lets a set-up earn what stood at that moment, and nothing before anything was set', () => {
    const book = foldReviewBook(
      written(
        { kind: 'set-up-standard-set', standardMs: 100_000 },
        { kind: 'set-up-standard-set', standardMs: 200_000 },
        { kind: 'set-up-standard-set', standardMs: null },
      ),
    );
    const at = [-1, 0, 999, 1_000, 2_000].map((ms) => setUpStandardAt(book, MORNING_MS + ms));
    expect(at).toEqual([null, 100_000, 100_000, 200_000, null]);
  });
});
