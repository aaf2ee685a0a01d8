import { describe, expect, it } from 'vitest';
import { backupLines, LONGEST_LINE_BYTES } from '../../src/exchange/backup-lines';

/** How many lines a file has that comes in pieces so long, its second line so many bytes with its line feed. */
async function linesOf(secondLine: number, piece: number): Promise<number> {
  const file = new Uint8Array(3 + secondLine + 3).fill(0x20);
  for (const end of [3, 3 + secondLine, file.length]) file[end - 1] = 10;
  async function* pieces() {
    for (let from = 0; from < file.length; from += piece) yield file.subarray(from, from + piece);
  }
  let count = 0;
  for await (const lines of backupLines(pieces())) count += lines.length;
  return count;
}

describe('the lines of a backup', () => {
  it.each([
    ['one piece', 2 * LONGEST_LINE_BYTES],
    ['pieces of 1 MiB', 1 << 20],
    ['two pieces', LONGEST_LINE_BYTES - 1],
  ])('are as long as they may be, and a byte longer is refused: in %s', async (_, piece) => {
    expect(await linesOf(LONGEST_LINE_BYTES, piece)).toBe(3);
    await expect(linesOf(LONGEST_LINE_BYTES + 1, piece)).rejects.toMatchObject({
      fault: { code: 'line-too-long', line: 2 },
    });
  });
});
