import { describe, expect, it } from 'vitest';

type Exports = Readonly<Record<string, unknown>>;

const modules = import.meta.glob<Exports>('../../src/statistics/*.ts', { eager: true });
const texts = import.meta.glob<string>('../../src/statistics/*.ts', {
  eager: true,
  query: '?raw',
  import: 'default',
});

/** Every function of the folder by name, since an example may prepare its input with another one. */
const functions: Record<string, unknown> = Object.assign({}, ...Object.values(modules));

interface Example {
  readonly file: string;
  readonly code: string;
  readonly answer: string;
}

/** Lines `code // => answer` between an @example and the next tag or the end of the comment. */
function examplesIn(file: string, text: string): Example[] {
  const blocks = text.match(/@example[\s\S]*?(?=\n\s*\*\s*@|\*\/)/g) ?? [];
  return blocks
    .flatMap((block) => block.split('\n'))
    .map((line) => /^\s*\*?\s*(.+?)\s*\/\/ => (.+?)\s*$/.exec(line))
    .filter((found) => found !== null)
    .map(([, code, answer]) => ({ file, code: code!, answer: answer! }));
}

function evaluate(expression: string): unknown {
  return new Function(...Object.keys(functions), `return (${expression});`)(...Object.values(functions));
}

/** Equal, but for the last bits of a number: engines may differ there, and a reader does not. */
function agrees(ours: unknown, printed: unknown): boolean {
  if (typeof ours === 'number' && typeof printed === 'number') {
    return Math.abs(ours - printed) <= 1e-12 * Math.abs(printed);
  }
  if (typeof ours !== 'object' || typeof printed !== 'object' || ours === null || printed === null) {
    return Object.is(ours, printed);
  }
  const [a, b] = [new Map(Object.entries(ours)), new Map(Object.entries(printed))];
  return a.size === b.size && [...a].every(([key, value]) => b.has(key) && agrees(value, b.get(key)));
}

const sources = Object.entries(texts).map(([path, text]) => ({ file: path.split('/').at(-1)!, text }));
const examples = sources.flatMap(({ file, text }) => examplesIn(file, text));

describe('the examples in the comments of src/statistics', () => {
  it.each(examples)('$file: $code gives $answer', ({ code, answer }) => {
    expect(evaluate(code)).toSatisfy((value) => agrees(value, evaluate(answer)));
  });

  it('stand beside every exported function that answers something', () => {
    const without = sources
      // The require-… files answer nothing: they throw, and bad-input tests hold them.
      .filter(({ file, text }) => /^export function/m.test(text) && !file.startsWith('require-'))
      .filter(({ file, text }) => examplesIn(file, text).length === 0);
    expect(without.map(({ file }) => file)).toEqual([]);
  });

  it('would be told apart: a wrong answer in a comment is seen', () => {
    const planted = '/**\n * @example\n * median([9, 1, 5]) // => 9\n */';
    const [example] = examplesIn('planted.ts', planted);
    expect(agrees(evaluate(example!.code), evaluate(example!.answer))).toBe(false);
    expect(agrees({ mean: 5, n: 2 }, { mean: 5.00000001, n: 2 })).toBe(false);
    expect(agrees([1, 2], [1, 2, 3])).toBe(false);
  });
});
