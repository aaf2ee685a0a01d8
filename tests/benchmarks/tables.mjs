// The readings table out and in, beside a plain CSV library on the same 20,000 rows, in one run:
//   npm run bench:tables
// Ours checks every cell: numbers, guards against formulas, columns that belong together. The library only splits and joins.
import Papa from 'papaparse';
import { figure, timedInTurn } from './figure.mjs';
import { loadSource } from './load-source.mjs';

const { writeReadingsTable } = await loadSource('src/exchange/write-readings-table.ts');
const { readReadingsTable } = await loadSource('src/exchange/read-readings-table.ts');

const ROWS = 20_000;
const ELEMENTS = ['Load, clamp', 'Bore', 'Deburr "by hand"', 'Inspect', 'Put away'];
const rows = Array.from({ length: ROWS }, (_, place) => ({
  study: 'Housing, method 2',
  cycle: 1 + Math.floor(place / ELEMENTS.length),
  element: ELEMENTS[place % ELEMENTS.length],
  elementNo: 1 + (place % ELEMENTS.length),
  elementClass: 'repetitive',
  work: 'manual',
  placement: 'external',
  unitsPerOccurrence: 1,
  partsPerCycle: 1,
  observedMs: 5_000 + ((place * 7_919) % 40_000),
  ratingPct: 95 + (place % 3) * 5,
  excluded: null,
  allowancePct: 14,
  allowanceBasis: 'normal_time',
  machineAllowancePct: 4,
  carried: { part: 'HSG-1', operator: 'K7' },
}));
const table = writeReadingsTable(rows);
const cells = Papa.parse(table).data;
const read = readReadingsTable(table);
if (!read.ok || read.rows.length !== ROWS) throw new Error('the table comes back whole');

const [joined, written] = timedInTurn([() => Papa.unparse(cells), () => writeReadingsTable(rows)]);
figure({ name: 'export of 20,000 rows, beside papaparse', ours: written, floor: joined, bound: 3 });
const [split, taken] = timedInTurn([
  () => Papa.parse(table, { header: true }),
  () => readReadingsTable(table),
]);
figure({ name: 'import of 20,000 rows, beside papaparse', ours: taken, floor: split, bound: 4 });
