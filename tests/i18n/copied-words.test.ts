import { readFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';

const src = fileURLToPath(new URL('../../src', import.meta.url));

/** The file and all that it imports at once, in the app: what is read before a language has brought its words. */
function readAtOnce(file: string, found = new Set<string>()): Set<string> {
  if (found.has(file)) return found;
  found.add(file);
  const text = readFileSync(file, 'utf8');
  for (const [, from] of text.matchAll(/^(?:import|export)\s(?!type)[^'";]*?from\s+'(\.[^']+)'/gm)) {
    const base = path.join(path.dirname(file), from!);
    const ending = ['.ts', '.tsx'].find((each) => isFile(base + each));
    if (ending) readAtOnce(base + ending, found);
  }
  return found;
}

function isFile(file: string): boolean {
  try {
    readFileSync(file);
    return true;
  } catch {
    return false;
  }
}

/** Statements of a module that take words as they stand when it is read, not when they are said. */
function copies(text: string): string[] {
  const names = [...text.matchAll(/^import \{([^}]*)\} from '[^']*i18n\/en\/[^']*';/gm)]
    .flatMap(([, list]) => list!.split(','))
    .map((name) => name.trim().split(' as ').at(-1)!)
    .filter((name) => name !== '' && !name.startsWith('type '));
  if (names.length === 0) return [];
  const said = new RegExp(`\\b(${names.join('|')})\\b`);
  const statements = text.match(/^(?:export )?const [\s\S]*?(?:;$|^\}|=>)/gm) ?? [];
  return statements.filter((each) => said.test(each.slice(each.indexOf('=') + 1)));
}

describe('what is read before the words of a language', () => {
  it('copies none of the English ones', () => {
    const first = [...readAtOnce(path.join(src, 'main.tsx'))];
    const copied = first
      .filter((file) => !file.includes('i18n'))
      .flatMap((file) =>
        copies(readFileSync(file, 'utf8')).map((each) => `${path.relative(src, file)}: ${each}`),
      );
    expect(first.length).toBeGreaterThan(50);
    expect(copied).toEqual([]);
  });

  it('would be found out: a planted copy is seen, a function that says a word is not', () => {
    const planted = (line: string) => copies(`import { pace as words } from '../../i18n/en/pace';\n${line}`);
    expect(planted('const STOP = words.stop;')).toHaveLength(1);
    expect(planted('const list = [\n  words.stop,\n];')).toHaveLength(1);
    expect(planted('const stop = () => words.stop;')).toEqual([]);
  });
});
