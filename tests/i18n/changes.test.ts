import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { changeWords as german } from '../../src/i18n/de/changes';
import { changeWords as english } from '../../src/i18n/en/changes';
import { changeWords as spanish } from '../../src/i18n/es/changes';

const { version } = JSON.parse(
  readFileSync(fileURLToPath(new URL('../../package.json', import.meta.url)), 'utf8'),
);

describe('what changed', () => {
  it('is told of the release that package.json names, before all others', () => {
    expect(english.releases[0]!.version).toBe(version);
  });

  it.each(Object.entries({ german, spanish }))(
    'is told in %s of the same releases, line by line',
    (_, words) => {
      const shape = ({ releases }: typeof words) =>
        releases.map(({ version, lines }) => [version, lines.length]);
      expect(shape(words)).toEqual(shape(english));
    },
  );

  it('is told of no release twice', () => {
    const versions = english.releases.map((release) => release.version);
    expect(new Set(versions).size).toBe(versions.length);
  });
});
