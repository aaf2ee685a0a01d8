import { describe, expect, it } from 'vitest';
import { copyAge } from '../../../src/domain/records/copy-age';
import type { LogRecord } from '../../../src/domain/records/log-record';
import { recordAt, stampAt } from '../../support/records';

const HOUR_MS = 3_600_000;

const copied = (sequence: number, ms: number, records: number, device = 't'): LogRecord =>
  recordAt(sequence, ms, 'shop', { kind: 'copy-made-outside', how: 'folder', records }, { device });
const person = recordAt(1, 0, 'shop', { kind: 'person-added', code: 'K7' });

const ageOf = (shop: readonly LogRecord[], records: number, ms: number, finished = 0) =>
  copyAge(shop, { device: 't', records, finished, now: stampAt(ms) });

describe('copyAge', () => {
  it('says that there is no copy, and is due a day after the first record or with five finished', () => {
    expect(ageOf([], 0, 0)).toEqual({ isCopied: false, recordsSince: 0, finishedSince: 0, isDue: false });
    expect(ageOf([person], 12, 24 * HOUR_MS - 1, 4)).toEqual({
      isCopied: false,
      recordsSince: 12,
      finishedSince: 4,
      isDue: false,
    });
    expect(ageOf([person], 12, 24 * HOUR_MS).isDue).toBe(true);
    expect(ageOf([person], 12, HOUR_MS, 5).isDue).toBe(true);
  });

  it('is the time since the last copy, and the records after it without the one that notes the copy', () => {
    const shop = [copied(9, 0, 8), copied(31, HOUR_MS, 30)];
    // 45 records now: 30 in the copy, the note itself, 14 since.
    expect(ageOf(shop, 45, 3 * HOUR_MS)).toMatchObject({
      ageMs: 2 * HOUR_MS,
      recordsSince: 14,
      how: 'folder',
    });
    expect(ageOf(shop, 31, 3 * HOUR_MS)).toMatchObject({ recordsSince: 0 });
  });

  it('is due after 24 hours or five finished turns and studies, but not while nothing was recorded since', () => {
    const shop = [copied(9, 0, 8)];
    expect(ageOf(shop, 12, 24 * HOUR_MS - 1).isDue).toBe(false);
    expect(ageOf(shop, 12, 24 * HOUR_MS).isDue).toBe(true);
    expect(ageOf(shop, 12, HOUR_MS, 4).isDue).toBe(false);
    expect(ageOf(shop, 12, HOUR_MS, 5).isDue).toBe(true);
    expect(ageOf(shop, 9, 240 * HOUR_MS, 5).isDue).toBe(false);
  });

  it('does not count a copy that another tablet made', () => {
    expect(ageOf([copied(9, 0, 8, 'other')], 20, HOUR_MS)).toMatchObject({ isCopied: false });
  });

  it('is never below nothing, whatever the clock or the count did', () => {
    expect(ageOf([copied(9, HOUR_MS, 50)], 20, 0)).toMatchObject({ ageMs: 0, recordsSince: 0 });
  });
});
