import { BackupRefusal } from './backup-refusal';

type Bytes = Uint8Array<ArrayBuffer>;

const LINE_FEED = 10;
/** A study imported from a table is one record: at 500 bytes a row, this is 130,000 rows. */
export const LONGEST_LINE_BYTES = 64 << 20;

/** The lines of a file, each with its line feed, several at a time. The last one may lack it. */
export async function* backupLines(chunks: AsyncIterable<Bytes>): AsyncGenerator<Bytes[]> {
  let begun: Bytes[] = [];
  let begunBytes = 0;
  let count = 0;
  for await (const chunk of chunks) {
    const lines: Bytes[] = [];
    let from = 0;
    for (let feed = chunk.indexOf(LINE_FEED); feed >= 0; feed = chunk.indexOf(LINE_FEED, from)) {
      const end = chunk.subarray(from, feed + 1);
      // However it comes in pieces: the same file is taken by every reader, or by none.
      if (begunBytes + end.length > LONGEST_LINE_BYTES) break;
      lines.push(begun.length === 0 ? end : whole([...begun, end]));
      begun = [];
      begunBytes = 0;
      from = feed + 1;
    }
    count += lines.length;
    if (lines.length > 0) yield lines;
    if (from < chunk.length) {
      begun.push(chunk.subarray(from));
      begunBytes += chunk.length - from;
    }
    if (begunBytes > LONGEST_LINE_BYTES) {
      throw new BackupRefusal({ code: 'line-too-long', line: count + 1 });
    }
  }
  if (begun.length > 0) yield [whole(begun)];
}

function whole(pieces: readonly Bytes[]): Bytes {
  const all = new Uint8Array(pieces.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const piece of pieces) {
    all.set(piece, at);
    at += piece.length;
  }
  return all;
}
