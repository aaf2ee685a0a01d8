// Writes the table of published answers between its markers in DEVELOPERS.md:
//
//     node .config/check-value-table.mjs
//
// Without the file or the markers it prints the table. tests/statistics/check-value-table.test.ts fails when the
// table in DEVELOPERS.md is not the one that would be written.
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { runnerImport } from 'vite';

const top = fileURLToPath(new URL('..', import.meta.url));
const developers = path.join(top, 'DEVELOPERS.md');
const start = '<!-- check-values:start -->';
const end = '<!-- check-values:end -->';

const load = async (file) =>
  (await runnerImport(path.join(top, file), { root: top, configFile: false })).module;
const { checkValueTable } = await load('tests/statistics/check-value-table.ts');
const { publishedStudyAnswers } = await load('tests/statistics/published-study-answers.ts');
const { publishedAnswers } = await load('tests/statistics/published-answers.ts');

const table = checkValueTable([...publishedStudyAnswers(), ...publishedAnswers()]);
const text = existsSync(developers) ? readFileSync(developers, 'utf8') : '';
const [before, rest] = text.split(start);
const after = rest?.split(end)[1];
if (after === undefined) {
  process.stdout.write(`${table}\n`);
} else {
  writeFileSync(developers, `${before}${start}\n\n${table}\n\n${end}${after}`);
}
