import { spawn } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, describe, expect, it } from 'vitest';
import type { Recomputed } from '../../src/exchange/recompute-table';
import { fixturePath, fixtureText, recomputed } from './recomputed-fixture';

const top = fileURLToPath(new URL('../..', import.meta.url));
const elsewhere = mkdtempSync(path.join(tmpdir(), 'readings-'));
afterAll(() => rmSync(elsewhere, { recursive: true }));

interface Finished {
  readonly status: number | null;
  readonly stdout: string;
  readonly stderr: string;
}

/** The command as a person types it, in a process of its own. */
function recompute(args: readonly string[], { folder = top } = {}): Promise<Finished> {
  return finished('npm', ['--prefix', top, 'run', '--silent', 'recompute', '--', ...args], folder);
}

/** The program behind it, without the half second that npm takes. */
function recomputeQuickly(args: readonly string[]): Promise<Finished> {
  return finished(process.execPath, [path.join(top, '.config/recompute.mjs'), ...args], top);
}

function finished(command: string, args: readonly string[], folder: string): Promise<Finished> {
  return new Promise((resolve, reject) => {
    const child = spawn(command, args, { cwd: folder, env: { ...process.env, INIT_CWD: folder } });
    let stdout = '';
    let stderr = '';
    child.stdout.on('data', (piece: Buffer) => {
      stdout += piece.toString();
    });
    child.stderr.on('data', (piece: Buffer) => {
      stderr += piece.toString();
    });
    child.on('error', reject);
    child.on('close', (status) => resolve({ status, stdout, stderr }));
  });
}

function fileOf(name: string, content: string | Uint8Array): string {
  writeFileSync(path.join(elsewhere, name), content);
  return path.join(elsewhere, name);
}

const standardMinutes = ({ studies }: Recomputed) => studies[0]!.standard_time_s! / 60;

describe('npm run --silent recompute -- FILE.csv', () => {
  // The first answer is printed as 18.07 from 18.0706, the second as 5.4 from 5.3915.
  it.each([
    ['Heizer & Render, Example 10.2', 'heizer-10-2-study.csv', '18.07'],
    ['Heizer & Render, Problem 10.23', 'heizer-10-23-study.csv', '5.39'],
    ['Stevenson, problem 3', 'stevenson-3-study.csv', '4.33'],
    ['Krajewski, Supplement H, Problem 1', 'krajewski-h-1-study.csv', '48.94'],
  ])('prints the answer of %s', async (_, file, answer) => {
    const { status, stdout, stderr } = await recompute([path.join('fixtures/published', file)]);
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
    const printed = JSON.parse(stdout) as Recomputed;
    expect(standardMinutes(printed).toFixed(2)).toBe(answer);
    expect(printed).toEqual(recomputed(fixtureText(`published/${file}`)));
  });

  it('prints exactly the members that were agreed, for one reading with null where it cannot be said', async () => {
    const file = fileOf('one.csv', 'study,cycle,element,observed_s\nA,1,Load,9\n');
    const { stdout } = await recomputeQuickly([file]);
    expect(JSON.parse(stdout)).toEqual({
      studies: [
        {
          study: 'A',
          elements: [
            {
              element: 'Load',
              n: 1,
              excluded: 0,
              observed_mean_s: 9,
              observed_sd_s: null,
              normal_mean_s: 9,
              normal_per_unit_s: 9,
              precision_pct: null,
              required_n: { t: null, t_pilot: null, z: null, ilo: null },
              required_n_raw: { t_pilot: null, z: null, ilo: null },
            },
          ],
          normal_time_s: 9,
          standard_time_s: 9,
          pieces_per_hour: 400,
          governing: null,
        },
      ],
    });
  });

  it('takes the precision and the confidence that are asked', async () => {
    const file = fixturePath('published/cronometraje-d2-1-study.csv');
    const { stdout } = await recomputeQuickly([file, '--confidence', '0.95', '--precision=0.04']);
    const [study] = (JSON.parse(stdout) as Recomputed).studies;
    // Printed 207.34 and 62.39 in “Ejercicios de cronometraje resueltos”, D.2 problem 1, from rounded deviations.
    expect(study!.elements.map(({ required_n }) => required_n.t_pilot)).toEqual([208, 63]);
  });

  it('finds a file from the folder that the person stands in', async () => {
    fileOf('here.csv', fixtureText('published/krajewski-h-1-study.csv'));
    const { status, stdout } = await recompute(['here.csv'], { folder: elsewhere });
    expect(status).toBe(0);
    expect(standardMinutes(JSON.parse(stdout) as Recomputed)).toBeCloseTo(48.944, 9);
  });

  it('refuses a bad file with one line a fault on standard error, and nothing on standard output', async () => {
    const table = [
      'study,cycle,element,observed_s,work,rating_pct',
      'A,1,Load,twelve,manual,100',
      'A,1,Bore,-1,machine,110',
    ];
    expect(await recompute([fileOf('bad.csv', table.join('\r\n'))])).toEqual({
      status: 1,
      stdout: '',
      stderr:
        'Line 2, column observed_s: "twelve" is not a number with a decimal point.\n' +
        'Line 3, column rating_pct: a machine element is rated 100 only, and this row says 110.\n' +
        'Line 3, column observed_s: "-1" is not a time from 0 to below 1000000000 s.\n',
    });
  });

  it.each([
    ['0 bytes', new Uint8Array(), 'Line 1, column 1: the file is empty.\n'],
    [
      'a picture renamed .csv',
      readFileSync(path.join(top, 'src/public/icon-180.png')),
      'Line 1, column 1: this is not text in UTF-8, so the file is no readings table or was saved in another character set.\n',
    ],
  ])('refuses %s', async (_, content, sentence) => {
    expect(await recomputeQuickly([fileOf('odd.csv', content)])).toEqual({
      status: 1,
      stdout: '',
      stderr: sentence,
    });
  });

  const usage = 'npm run --silent recompute -- FILE.csv [--confidence 0.95] [--precision 0.05]';
  const good = fixturePath('published/krajewski-h-1-study.csv');

  it.each([
    ['no file', [], `The command takes one file: ${usage}\n`],
    ['two files', [good, good], `The command takes one file: ${usage}\n`],
    ['a file that is not there', ['nowhere.csv'], 'nowhere.csv cannot be read: ENOENT.\n'],
    ['a folder', [elsewhere], `${elsewhere} cannot be read: EISDIR.\n`],
    ['an unknown option', [good, '--fast'], `The options are not understood; the command is: ${usage}\n`],
    [
      'a confidence in per cent',
      [good, '--confidence', '95'],
      '--confidence is a share above 0 and below 1, such as 0.95.\n',
    ],
    [
      'a precision that is no number',
      [good, '--precision', 'fine'],
      '--precision is a share above 0 and below 1, such as 0.05.\n',
    ],
  ])('refuses %s with one sentence', async (_, args, sentence) => {
    expect(await recomputeQuickly(args)).toEqual({ status: 1, stdout: '', stderr: sentence });
  });

  it('says null, and does not fail, for a precision that no study can reach', async () => {
    const { status, stdout } = await recomputeQuickly([good, '--precision', '1e-9']);
    expect(status).toBe(0);
    expect((JSON.parse(stdout) as Recomputed).studies[0]!.elements[0]!.required_n.t).toBeNull();
  });
});
