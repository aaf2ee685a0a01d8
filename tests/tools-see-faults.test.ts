import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, expect, it } from 'vitest';

// Settings of compiler and linter can be loosened without anything failing: a fault of each kind is planted.

const top = fileURLToPath(new URL('..', import.meta.url));
const folder = mkdtempSync(path.join(tmpdir(), 'pacewright-planted-'));
const at = (file: string) => JSON.stringify(path.join(top, file));

const forTheCompiler = {
  'page-in-the-domain': 'export const title = document.title;',
  'storage-in-the-domain': "export const shelf = indexedDB.open('pacewright');",
  'type-across-layers': `import { median } from ${at('src/statistics/median')};\nexport const m = median('many');`,
  'no-such-element': 'const list: readonly number[] = [];\nexport const first: number = list[0];',
  'left-undefined': 'export const a: { b?: number } = { b: undefined };',
  'unused-parameter': 'export const a = (unused: number) => 1;',
  'implicit-any': 'export const a = (b) => b;',
};
const forTheLinter = {
  'explicit-any': ['export const a = (b: any) => b;', 'noExplicitAny'],
  'type-imported-as-value': ["import { A } from './a';\nexport const b = (a: A) => a;", 'useImportType'],
  'unused-import': ["import { a } from './a';\nexport const b = 1;", 'noUnusedImports'],
} as const;
const sound = `import { median } from ${at('src/statistics/median')};\nexport const m = median([1, 2]);\n`;

function run(tool: string, args: readonly string[]): string {
  const file = path.join(top, 'node_modules', tool);
  const { stdout, stderr } = spawnSync(process.execPath, [file, ...args], { cwd: top, encoding: 'utf8' });
  return stdout + stderr;
}

let compiled = '';
beforeAll(() => {
  for (const [name, text] of Object.entries(forTheCompiler))
    writeFileSync(path.join(folder, `${name}.ts`), text);
  for (const [name, [text]] of Object.entries(forTheLinter))
    writeFileSync(path.join(folder, `${name}.ts`), text);
  writeFileSync(path.join(folder, 'sound.ts'), sound);
  const config = {
    // As the domain is compiled, but that its files lie elsewhere.
    extends: path.join(top, 'src/domain/tsconfig.json'),
    compilerOptions: {
      composite: false,
      emitDeclarationOnly: false,
      declaration: false,
      noEmit: true,
      rootDir: '/',
    },
    files: [...Object.keys(forTheCompiler), 'sound'].map((name) => `${name}.ts`),
    include: [],
    references: [],
  };
  writeFileSync(path.join(folder, 'tsconfig.json'), JSON.stringify(config));
  compiled = run('typescript/bin/tsc', ['-p', folder, '--pretty', 'false']);
});
afterAll(() => rmSync(folder, { recursive: true }));

it.each(Object.keys(forTheCompiler))('the compiler, as it is set for the domain, refuses %s', (name) => {
  expect(compiled).toMatch(new RegExp(`${name}\\.ts\\(\\d+,\\d+\\): error TS`));
});

it('the compiler has nothing against what is sound', () => {
  expect(compiled).not.toContain('sound.ts');
  expect(compiled).not.toMatch(/^error/m);
});

it.each(Object.entries(forTheLinter))('the linter refuses %s', (name, [, rule]) => {
  const file = path.join(folder, `${name}.ts`);
  const said = run('@biomejs/biome/bin/biome', [
    'lint',
    '--config-path=.config/lint.json',
    '--error-on-warnings',
    file,
  ]);
  expect(said).toContain(rule);
});
