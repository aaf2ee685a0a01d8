// Every figure that is held against a bare floor of the same run, one after the other, in one table:
//   npm run bench                  small sizes, under ten minutes
//   npm run bench -- --large       a million records, a million parts
// A machine that does something else at the same time widens every ratio: what is not met is to be run again alone.
import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { top } from '../../.config/prepare.mjs';
import { builtApp } from './built-app.mjs';

const isLarge = process.argv.includes('--large');
const runs = [
  ['tap-to-saved', isLarge ? ['1000000', '25'] : ['0', '15']],
  ['pace-session', [isLarge ? '5' : '0.2']],
  ['open-with-many', [isLarge ? '1000000' : '100000']],
  ['statistics', []],
  ['simulate-cell', [isLarge ? '1000000' : '100000']],
  ['tables', []],
];

const { dist, discard } = builtApp();
const folder = mkdtempSync(path.join(tmpdir(), 'pacewright-figures-'));
const rows = [];
for (const [name, args] of runs) {
  process.stdout.write(`\n${name}\n`);
  const file = path.join(folder, name);
  const { status } = spawnSync(process.execPath, [`tests/benchmarks/${name}.mjs`, ...args], {
    cwd: top,
    stdio: ['ignore', 'inherit', 'inherit'],
    env: { ...process.env, PACEWRIGHT_DIST: dist, PACEWRIGHT_FIGURES: file },
  });
  const told = existsSync(file)
    ? readFileSync(file, 'utf8')
        .trim()
        .split('\n')
        .map((line) => JSON.parse(line))
    : [];
  rows.push(...told);
  if (status !== 0 && told.every(({ isMet }) => isMet !== false)) {
    rows.push({ name, why: 'it ended with a fault, told above', isMet: false });
  }
}
rmSync(folder, { recursive: true });
discard();

const heads = ['', 'ours', 'floor', 'ratio', 'bound', 'met'];
const cells = rows.map(({ name, why, unit, ours, floor, ratio, limit, isMet }) =>
  why
    ? [name, '–', '–', '–', '–', why]
    : [name, `${ours} ${unit}`, `${floor} ${unit}`, ratio, limit, isMet ? 'yes' : 'NO'],
);
const widths = heads.map((_, column) => Math.max(...[heads, ...cells].map((row) => row[column].length)));
const line = (row) =>
  row
    .map((cell, column) =>
      column > 0 && column < 4 ? cell.padStart(widths[column]) : cell.padEnd(widths[column]),
    )
    .join('  ')
    .trimEnd();
process.stdout.write(`\n${[heads, ...cells].map(line).join('\n')}\n`);
if (rows.some(({ isMet }) => isMet === false)) process.exitCode = 1;
