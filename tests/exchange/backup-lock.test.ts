import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { BackupFault } from '../../src/application/ports/backup-fault';
import { demoRecords } from '../../src/demo/demo-records';
import { webSecrets } from '../../src/device/web-secrets';
import { recordLine } from '../../src/domain/records/record-line';
import { backupFormat } from '../../src/exchange/backup-format';
import { backupFaultInWords } from '../../src/screens/records/fault-in-words';
import { arbitraryShop } from '../support/arbitrary-records';
import { type Bytes, backupOf, quickSecrets, sourceOf } from '../support/backup-files';

const PASSPHRASE = 'three blunt drills';
/** Of the format: plain bytes of a piece, and the tag that AES-GCM adds. */
const PIECE = 262_144 + 16;
const format = backupFormat(quickSecrets());
const shop = demoRecords();
const small = await backupOf(format, shop.slice(0, 20), PASSPHRASE);
const large = await backupOf(format, shop, PASSPHRASE);

async function faultOf(
  file: Bytes,
  passphrase: string | undefined = PASSPHRASE,
): Promise<BackupFault | null> {
  const reading = await format.read(sourceOf(file), { passphrase });
  if (reading.ok) return null;
  expect(backupFaultInWords(reading.fault)).toMatch(/^[A-Z].{15,400}\.$/);
  return reading.fault;
}

/** The first line and the pieces of a locked file. */
function apart(file: Bytes): { header: Bytes; pieces: Bytes[] } {
  const start = file.indexOf(10) + 1;
  const pieces: Bytes[] = [];
  for (let from = start; from < file.length; from += PIECE) pieces.push(file.slice(from, from + PIECE));
  return { header: file.slice(0, start), pieces };
}

function together(...parts: readonly Bytes[]): Bytes {
  return new Uint8Array(Buffer.concat(parts));
}

describe('a locked backup', () => {
  it('gives back 300 random shops with the pass-phrase it was made with', async () => {
    await fc.assert(
      fc.asyncProperty(arbitraryShop, fc.string({ minLength: 1 }), async (records, passphrase) => {
        const found: string[] = [];
        const file = await backupOf(format, records, passphrase);
        const take = (some: typeof records) => void found.push(...some.map(recordLine));
        const reading = await format.read(sourceOf(file), { passphrase, take: (some) => take([...some]) });
        expect(reading).toMatchObject({ ok: true, summary: { records: records.length } });
        expect(found).toEqual(records.map(recordLine));
      }),
      { numRuns: 300 },
    );
  });

  it('spans several pieces and shows nothing of what it holds', async () => {
    expect(apart(large).pieces.length).toBeGreaterThan(3);
    expect(await faultOf(large)).toBeNull();
    const text = Buffer.from(large).toString('latin1');
    // Long enough that chance does not put them into a megabyte.
    const words = ['"pacewright-backup"', 'part-done', 'turn-started', 'Edge-banded'];
    expect(words.filter((word) => text.includes(word))).toEqual([]);
  });

  it('opens with nothing but its pass-phrase, and asks for it', async () => {
    expect(await faultOf(small, 'three blunt drill')).toEqual({ code: 'pass-phrase-wrong' });
    expect(await format.read(sourceOf(small))).toEqual({ ok: false, fault: { code: 'pass-phrase-needed' } });
    expect(await backupFormat(null).read(sourceOf(small), { passphrase: PASSPHRASE })).toEqual({
      ok: false,
      fault: { code: 'no-cryptography' },
    });
  });

  it('opens with letters that are the same, however the keyboard composes them', async () => {
    const file = await backupOf(format, shop.slice(0, 3), 'K\u00f6rner 7');
    expect(await faultOf(file, 'Ko\u0308rner 7')).toBeNull();
  });

  it('is never locked with the same key twice, and asks for 600,000 rounds or more', async () => {
    const again = await backupOf(format, shop.slice(0, 20), PASSPHRASE);
    const [one, two] = [small, again].map((file) => JSON.parse(new TextDecoder().decode(apart(file).header)));
    expect(one.salt).not.toBe(two.salt);
    expect(one.noncePrefix).not.toBe(two.noncePrefix);
    // OWASP's cheat sheet on password storage, 2023, for PBKDF2 with SHA-256 (from memory).
    expect(one.iterations).toBeGreaterThanOrEqual(600_000);
    const easier = { ...one, iterations: 1_000 };
    const { pieces } = apart(small);
    const line = new TextEncoder().encode(`${JSON.stringify(easier)}\n`);
    expect(await faultOf(together(line, ...pieces))).toEqual({ code: 'not-a-backup' });
    const harder = new TextEncoder().encode(`${JSON.stringify({ ...one, iterations: 2e9 })}\n`);
    expect(await faultOf(together(harder, ...pieces))).toEqual({ code: 'not-a-backup' });
  });

  it('is refused wherever it is cut and whichever bit is turned over: 3,000 files', async () => {
    await fc.assert(
      fc.asyncProperty(fc.nat(small.length - 1), fc.nat(7), async (place, bit) => {
        expect(await faultOf(small.slice(0, place))).not.toBeNull();
        const damaged = small.slice();
        damaged[place]! ^= 1 << bit;
        expect(await faultOf(damaged)).not.toBeNull();
      }),
      { numRuns: 1_500 },
    );
  });

  it('is refused when pieces are left out, doubled, moved, cut off at a seam, or come from another file', async () => {
    const { header, pieces } = apart(large);
    const other = apart(await backupOf(format, shop, PASSPHRASE));
    // Found by the piece itself, before anything in it is looked at: the first that is not in its place.
    const damaged = (place: number) =>
      place === 0 ? { code: 'pass-phrase-wrong' } : { code: 'piece-damaged', piece: place + 1 };
    const last = pieces.length - 1;
    for (const place of pieces.keys()) {
      const without = pieces.filter((_, index) => index !== place);
      const seam = place === last ? last - 1 : place;
      expect(await faultOf(together(header, ...without)), `without ${place}`).toEqual(damaged(seam));
      const doubled = pieces.flatMap((piece, index) => (index === place ? [piece, piece] : [piece]));
      const second = place === last ? last : place + 1;
      expect(await faultOf(together(header, ...doubled)), `${place} doubled`).toEqual(damaged(second));
      const spliced = pieces.map((piece, index) => (index === place ? other.pieces[index]! : piece));
      expect(await faultOf(together(header, ...spliced)), `${place} of another`).toEqual(damaged(place));
      for (let later = place + 1; later < pieces.length; later += 1) {
        const moved = pieces.slice();
        [moved[place], moved[later]] = [pieces[later]!, pieces[place]!];
        expect(await faultOf(together(header, ...moved)), `${place} and ${later}`).toEqual(damaged(place));
      }
    }
    for (let kept = 1; kept < pieces.length; kept += 1) {
      const cut = together(header, ...pieces.slice(0, kept));
      expect(await faultOf(cut), `the first ${kept}`).toEqual(damaged(kept - 1));
    }
    expect(await faultOf(header)).toEqual({ code: 'pass-phrase-wrong' });
    expect(await faultOf(together(other.header, ...pieces))).toEqual({ code: 'pass-phrase-wrong' });
    expect(await faultOf(together(header, ...pieces, new Uint8Array([1])))).toEqual(damaged(last));
  });

  it('is refused with another first line, even one that says the same', async () => {
    const { header, pieces } = apart(small);
    const { format: name, ...rest } = JSON.parse(new TextDecoder().decode(header));
    const same = new TextEncoder().encode(`${JSON.stringify({ ...rest, format: name })}\n`);
    expect(await faultOf(together(same, ...pieces))).toEqual({ code: 'pass-phrase-wrong' });
  });

  it('opens and refuses with the machine’s own PBKDF2 too', async () => {
    const real = backupFormat(webSecrets());
    const file = await backupOf(real, shop.slice(0, 5), PASSPHRASE);
    expect(await real.read(sourceOf(file), { passphrase: PASSPHRASE })).toMatchObject({ ok: true });
    expect(await real.read(sourceOf(file), { passphrase: 'three' })).toEqual({
      ok: false,
      fault: { code: 'pass-phrase-wrong' },
    });
  });

  it('cannot be written without a pass-phrase or without cryptography', () => {
    async function* nothing() {}
    const about = { release: '', device: 't', madeAt: shop[0]!.stamp };
    expect(() => format.write(nothing(), about, '')).toThrow(
      new RangeError('writeBackup requires a pass-phrase with at least one character'),
    );
    expect(() => backupFormat(null).write(nothing(), about, 'x')).toThrow(
      new RangeError('writeBackup requires a browser with cryptography for a pass-phrase'),
    );
  });
});
