import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';

const src = fileURLToPath(new URL('../../src', import.meta.url));
const files = readdirSync(src, { recursive: true, withFileTypes: true })
  .filter((entry) => entry.isFile() && /\.tsx?$/.test(entry.name))
  .map((entry) => path.join(entry.parentPath, entry.name));
const isWords = (file: string) => file.includes(path.join('i18n', 'en'));
const code = files
  .filter((file) => !isWords(file))
  .map((file) => readFileSync(file, 'utf8'))
  .join('\n');

/** Keys of a words file that no source file names in any form. */
function unused(text: string): string[] {
  const keys = [...text.matchAll(/^\s{2,6}'?([A-Za-z][\w-]*)'?\s*:/gm)].map((found) => found[1]!);
  return keys.filter((key) => !new RegExp(`\\b${key}\\b`).test(code));
}

describe('the words of the screens', () => {
  it('are all used', () => {
    const left = files
      .filter(isWords)
      .flatMap((file) => unused(readFileSync(file, 'utf8')).map((key) => `${path.basename(file)}: ${key}`));
    expect(left).toEqual([]);
  });

  it('would be missed: a planted word that nobody uses is found', () => {
    expect(unused("  neverSaidByAnybody: 'x',\n  saved: 'y',")).toEqual(['neverSaidByAnybody']);
  });
});

describe('a target', () => {
  it('is rounded wherever it is shown, so that no two screens show it a second apart', () => {
    const cut = files.filter((file) =>
      /(?<![A-Za-z])clockFace\([^)]*target/i.test(readFileSync(file, 'utf8')),
    );
    expect(cut.map((file) => path.relative(src, file))).toEqual([]);
  });
});
