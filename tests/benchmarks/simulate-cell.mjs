// How quickly the cell is simulated, beside an independent simulation package on the same cell in the same run:
//
//     node tests/benchmarks/simulate-cell.mjs [parts]     (python3-simpy of Debian; 1,000,000 parts unless told)
//
// The cell is code M of the demo shop: 400 timed cycles of an operator and a boring machine, drawn again by the same
// random numbers on both sides, so that both give the same answer.
import { execFileSync, spawnSync } from 'node:child_process';
import path from 'node:path';
import { top } from '../../.config/prepare.mjs';
import { figure, notMeasured } from './figure.mjs';
import { loadSource } from './load-source.mjs';

const { CellSimulation } = await loadSource('src/domain/cell/simulate-cell.ts');
const { spreadCell, planOf } = await loadSource('tests/domain/cell/demo-cell.ts');

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
const say = (text) => process.stdout.write(`${text}\n`);
const name = `${parts.toLocaleString('en')} parts through the cell, beside SimPy`;
const isThere = spawnSync('/usr/bin/python3', ['-c', 'import SimPy']).status === 0;
if (!isThere) {
  notMeasured(name, 'SimPy is not installed (Debian: python3-simpy)');
} else {
  const script = path.join(top, 'fixtures/reference/cell-reference.py');
  const theirs = JSON.parse(
    execFileSync('/usr/bin/python3', [script, '--time', String(parts)], { input: JSON.stringify(rows) }),
  );
  say(`interval ${(own.intervalMs / 60_000).toFixed(6)} and ${(theirs.intervalMs / 60_000).toFixed(6)} min`);
  figure({
    name,
    ours: own.seconds * 1_000,
    floor: theirs.seconds * 1_000,
    bound: 50,
    isAtLeast: true,
  });
}
