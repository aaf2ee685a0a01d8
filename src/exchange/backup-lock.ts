import { bytesToHex, hexToBytes } from '@noble/hashes/utils.js';
import type { Secrets } from '../application/ports/secrets';
import type { BackupByteReader } from './backup-byte-reader';
import { BackupRefusal } from './backup-refusal';
import { exactly, numberThat, oneOf, type Shape } from './backup-shape';

type Bytes = Uint8Array<ArrayBuffer>;

// DO NOT CHANGE. Files in drawers and on shares begin with it.
export const LOCKED_FORMAT = 'pacewright-backup-locked';
const LOCKED_VERSION = 1;

/** What OWASP asked of PBKDF2 with SHA-256 in its cheat sheet on password storage, 2023 (from memory). */
export const LOCK_ITERATIONS = 600_000;
/** A file that asks for more would keep the tablet busy for minutes. */
const MOST_ITERATIONS = 10_000_000;
const SALT_BYTES = 16;
const PREFIX_BYTES = 7;
const TAG_BYTES = 16;
/** Plain bytes of every piece but the last: a page's worth of memory, a fifth of a thousandth spent on tags. */
const PIECE_BYTES = 1 << 18;

/** The first line of a locked file, in the clear: how the key is made. */
interface LockHeader {
  readonly format: typeof LOCKED_FORMAT;
  readonly version: number;
  readonly iterations: number;
  readonly salt: string;
  /** The first 7 of the 12 bytes of every piece's nonce. */
  readonly noncePrefix: string;
}

const hexOf =
  (bytes: number): Shape =>
  (value) =>
    typeof value === 'string' && value.length === 2 * bytes && /^[0-9a-f]+$/.test(value) ? null : '';

const lockHeader = exactly<LockHeader>({
  format: oneOf(LOCKED_FORMAT),
  version: oneOf(LOCKED_VERSION),
  iterations: numberThat(
    (value) => Number.isInteger(value) && value >= LOCK_ITERATIONS && value <= MOST_ITERATIONS,
  ),
  salt: hexOf(SALT_BYTES),
  noncePrefix: hexOf(PREFIX_BYTES),
});

/**
 * Locks a file with a pass-phrase, piece by piece: AES-256-GCM under a key that PBKDF2 makes of the
 * pass-phrase and a fresh salt.
 *
 * A piece's nonce holds its number and whether it is the last, and its tag covers the first line too. So a
 * piece that is changed, left out, moved, or taken from another file does not open, and neither does a file
 * that ends early. Source: Hoang, Reyhanitabar, Rogaway, Vizár, "Online authenticated-encryption and its
 * nonce-reuse misuse-resistance", CRYPTO 2015, construction STREAM (from memory).
 */
export async function* lockBackup(
  chunks: AsyncIterable<Bytes>,
  passphrase: string,
  secrets: Secrets,
): AsyncGenerator<Bytes> {
  const header: LockHeader = {
    format: LOCKED_FORMAT,
    version: LOCKED_VERSION,
    iterations: LOCK_ITERATIONS,
    salt: bytesToHex(secrets.randomBytes(SALT_BYTES)),
    noncePrefix: bytesToHex(secrets.randomBytes(PREFIX_BYTES)),
  };
  const line = new TextEncoder().encode(`${JSON.stringify(header)}\n`);
  const pieces = await piecesFor(header, line, passphrase, secrets);
  yield line;
  let piece = new Uint8Array(PIECE_BYTES);
  let filled = 0;
  let number = 0;
  for await (const chunk of chunks) {
    for (let from = 0; from < chunk.length; ) {
      // A full piece waits until there is more: only then is it certain not to be the last.
      if (filled === PIECE_BYTES) {
        yield await pieces.lock(piece, number, false);
        number += 1;
        piece = new Uint8Array(PIECE_BYTES);
        filled = 0;
      }
      const part = chunk.subarray(from, from + PIECE_BYTES - filled);
      piece.set(part, filled);
      filled += part.length;
      from += part.length;
    }
  }
  yield await pieces.lock(piece.subarray(0, filled), number, true);
}

/** What a locked file holds, after its first line was read. */
export async function* unlockBackup(
  line: Bytes,
  rest: BackupByteReader,
  passphrase: string,
  secrets: Secrets,
): AsyncGenerator<Bytes> {
  const pieces = await piecesFor(readLockHeader(line), line, passphrase, secrets);
  for (let number = 0; ; number += 1) {
    const piece = await rest.take(PIECE_BYTES + TAG_BYTES);
    const isLast = await rest.isAtEnd();
    yield await pieces.unlock(piece, number, isLast);
    if (isLast) return;
  }
}

function readLockHeader(line: Bytes): LockHeader {
  const header = JSON.parse(new TextDecoder().decode(line));
  if (typeof header.version === 'number' && header.version > LOCKED_VERSION) {
    throw new BackupRefusal({ code: 'made-by-newer-version', release: '' });
  }
  if (lockHeader(header) !== null) throw new BackupRefusal({ code: 'not-a-backup' });
  return header;
}

async function piecesFor(header: LockHeader, line: Bytes, passphrase: string, secrets: Secrets) {
  const { subtle } = globalThis.crypto;
  // Tablets differ in how they write letters with accents; composed, they are the same letters.
  const secret = passphrase.normalize('NFKC');
  const raw = await secrets.stretch(secret, new Uint8Array(hexToBytes(header.salt)), header.iterations);
  const key = await subtle.importKey('raw', raw, 'AES-GCM', false, ['encrypt', 'decrypt']);
  const prefix = hexToBytes(header.noncePrefix);

  const settings = (number: number, isLast: boolean) => {
    const iv = new Uint8Array(12);
    iv.set(prefix);
    new DataView(iv.buffer).setUint32(PREFIX_BYTES, number);
    iv[11] = isLast ? 1 : 0;
    return { name: 'AES-GCM', iv, additionalData: line };
  };
  return {
    lock: async (piece: Bytes, number: number, isLast: boolean) =>
      new Uint8Array(await subtle.encrypt(settings(number, isLast), key, piece)),
    async unlock(piece: Bytes, number: number, isLast: boolean) {
      try {
        return new Uint8Array(await subtle.decrypt(settings(number, isLast), key, piece));
      } catch {
        throw new BackupRefusal(
          number === 0 ? { code: 'pass-phrase-wrong' } : { code: 'piece-damaged', piece: number + 1 },
        );
      }
    },
  };
}
