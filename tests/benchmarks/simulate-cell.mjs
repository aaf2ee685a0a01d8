// How quickly the cell is simulated, beside an independent simulation package on the same cell in the same run:
//
//     node tests/benchmarks/simulate-cell.mjs [parts]     (python3-simpy of Debian; 1,000,000 parts unless told)
//
// The cell is code M of the demo shop: 400 timed cycles of an operator and a boring machine, drawn again by the same
// random numbers on both sides, so that both give the same answer.
import { execFileSync } from 'node:child_process';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { runnerImport } from 'vite';

const top = fileURLToPath(new URL('../..', import.meta.url));
const load = async (file) =>
  (await runnerImport(path.join(top, file), { root: top, configFile: false })).module;
const { CellSimulation } = await load('src/domain/cell/simulate-cell.ts');
const { spreadCell, planOf } = await load('tests/domain/cell/demo-cell.ts');

const parts = Number(process.argv[2] ?? 1_000_000);
const work = spreadCell('M', 400);
const whole = {
  ...work,
  elements: work.elements.map((own) => ({ ...own, timesMs: own.timesMs.map(Math.round) })),
};
const rows = whole.elements[0].timesMs.map((_, i) => {
  const sum = (belongs) =>
    whole.elements.reduce((total, own) => total + (belongs(own) ? own.timesMs[i] : 0), 0);
  const isAfter = ({ name }) => name === 'E5' || name === 'E6';
  return {
    external: sum(({ place }) => place === 'external'),
    before: sum((own) => own.place === 'internal' && !isAfter(own)),
    after: sum(isAfter),
    machine: sum(({ place }) => place === 'machine'),
    other: 0,
  };
});

const ours = () => {
  const simulation = new CellSimulation(planOf(whole, { trolley: 1 }), 1);
  const from = performance.now();
  simulation.runParts(parts);
  return { seconds: (performance.now() - from) / 1_000, ...simulation.result() };
};
ours();
const own = [ours(), ours(), ours()].sort((a, b) => a.seconds - b.seconds)[1];
const script = path.join(top, 'fixtures/reference/cell-reference.py');
const theirs = JSON.parse(
  execFileSync('/usr/bin/python3', [script, '--time', String(parts)], { input: JSON.stringify(rows) }),
);
const say = (text) => process.stdout.write(`${text}\n`);
say(`${parts} parts: ${own.seconds.toFixed(3)} s here, ${theirs.seconds.toFixed(1)} s there`);
say(`interval ${(own.intervalMs / 60_000).toFixed(6)} and ${(theirs.intervalMs / 60_000).toFixed(6)} min`);
say(`ratio ${(theirs.seconds / own.seconds).toFixed(0)}`);
if (theirs.seconds / own.seconds < 50) {
  say('below 50');
  process.exitCode = 1;
}
