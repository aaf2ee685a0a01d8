import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { webSecrets } from '../../src/device/web-secrets';
import type { LogRecord } from '../../src/domain/records/log-record';
import { recordLine } from '../../src/domain/records/record-line';
import { foldShop } from '../../src/domain/shop/fold-shop';
import { foldStudy } from '../../src/domain/study/fold-study';
import { summariseStudy } from '../../src/domain/study/summarise-study';
import { foldTurn } from '../../src/domain/turn/fold-turn';
import { factShapes } from '../../src/exchange/backup-fact-shapes';
import { backupFormat } from '../../src/exchange/backup-format';
import { sourceOf } from '../support/backup-files';

// The files are never edited: shops have such files in drawers.
const read = (name: string) =>
  new Uint8Array(readFileSync(new URL(`../../fixtures/backups/${name}`, import.meta.url)));
const format = backupFormat(webSecrets());

async function recordsOf(name: string, passphrase?: string): Promise<LogRecord[]> {
  const found: LogRecord[] = [];
  const take = (records: readonly LogRecord[]) => void found.push(...records);
  const reading = await format.read(sourceOf(read(name)), { passphrase, take });
  // As its last line says.
  expect(reading).toMatchObject({
    ok: true,
    summary: {
      records: 47,
      devices: [
        { device: 'tablet-1a', records: 43, first: 1, last: 43 },
        { device: 'tablet-9z', records: 4, first: 1, last: 4 },
      ],
      breakCount: 0,
      sha256: '5f60a68395d0dc41d5b0fc9662f03220122e0df8385c30073eefc88d4098e3be',
    },
  });
  return found;
}

describe('a backup of format 1', () => {
  it('is read by this release, record by record', async () => {
    const records = await recordsOf('format-1.jsonl');
    const lines = new TextDecoder().decode(read('format-1.jsonl')).split('\n');
    expect(records.map(recordLine)).toEqual(lines.slice(1, -2));
  });

  it('is read from its locked twin with its pass-phrase', async () => {
    const plain = await recordsOf('format-1.jsonl');
    expect(await recordsOf('format-1-locked.bin', 'three blunt drills')).toEqual(plain);
  });

  it('still means what it meant: the shop, the turn and the study in it', async () => {
    const records = await recordsOf('format-1.jsonl');
    const stream = (name: string) => records.filter((record) => record.stream === name);
    const shop = foldShop(stream('shop'));
    expect(shop.people).toEqual(['K7']);
    expect(shop.parts.map(({ name, retired, targetMs }) => ({ name, retired, targetMs }))).toEqual([
      { name: 'Door, medium', retired: false, targetMs: 91_200 },
      { name: 'Door, small', retired: true, targetMs: null },
    ]);
    const turn = foldTurn(stream('tablet-1a:11'));
    // Taps at 150 s and 400 s after the start at 60 s, the third one undone; the second with its own time.
    expect(turn.cycles.map(({ netMs, outcome }) => ({ netMs, outcome }))).toEqual([
      { netMs: 90_000, outcome: 'rework' },
      { netMs: 88_500, outcome: 'good' },
    ]);
    const study = foldStudy(stream('tablet-1a:24'));
    expect(study.terms).toEqual({ allowancePct: 12, basis: 'shift', machineAllowancePct: 5 });
    expect(summariseStudy(study.readings.map(({ row }) => row)).elements.length).toBeGreaterThan(0);
  });

  it('holds a record of every kind that format 1 began with', async () => {
    const kinds = new Set<string>((await recordsOf('format-1.jsonl')).map(({ fact }) => fact.kind));
    // Kinds that later releases add are held by later files; none of these may ever go.
    expect([...kinds].filter((kind) => !factShapes.has(kind))).toEqual([]);
    expect(kinds.size).toBe(37);
  });
});
