import fc from 'fast-check';
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { elementClasses, placements, workKinds } from '../../src/domain/shop/element-definition';
import type { StudyRow } from '../../src/domain/study/study-row';
import { countGuardedCells } from '../../src/exchange/count-guarded-cells';
import { readReadingsTable } from '../../src/exchange/read-readings-table';
import { carriedColumns, knownColumn } from '../../src/exchange/readings-columns';
import { looksLikeFormula, spreadsheetSafeText } from '../../src/exchange/spreadsheet-safe-text';
import { writeReadingsTable } from '../../src/exchange/write-readings-table';

const hostilePiece = fc.constantFrom(
  ...[
    '"',
    '""',
    ',',
    ';',
    '\r',
    '\n',
    '\r\n',
    "'",
    '=',
    '+',
    '-',
    '@',
    '\t',
    '＝',
    ' ',
    '\uFEFF',
    '\0',
    '.5',
    'ä',
    '漢',
    '👷',
  ],
);
const text = fc.oneof(
  fc.array(hostilePiece, { maxLength: 6 }).map((pieces) => pieces.join('')),
  fc.string({ unit: 'binary', maxLength: 12 }),
);
const name = text.filter((each) => each.trim() !== '');
const time = fc.oneof(
  fc.double({ min: 0, max: 1e12, maxExcluded: true, noNaN: true }),
  fc.integer({ min: 0, max: 10_000_000 }).map((tenths) => tenths / 10),
);
const count = fc.integer({ min: 1, max: 1000 });
const percent = fc.oneof(fc.integer({ min: 0, max: 99 }), fc.double({ min: 0, max: 99, noNaN: true }));

const element = fc.record({
  element: name,
  elementNo: count,
  elementClass: fc.constantFrom(...elementClasses),
  work: fc.constantFrom(...workKinds),
  placement: fc.constantFrom(...placements),
  unitsPerOccurrence: fc.oneof(count, fc.double({ min: 0.01, max: 1000, noNaN: true })),
  partsPerCycle: count,
});

const reading = fc.record({
  cycle: count,
  time: fc.option(time),
  ratingPct: fc.oneof(fc.integer({ min: 1, max: 200 }), fc.double({ min: 0.5, max: 200, noNaN: true })),
  excluded: fc.option(name),
});

const study = fc.record({
  study: name,
  terms: fc.record({
    allowancePct: percent,
    allowanceBasis: fc.constantFrom('normal_time' as const, 'shift' as const),
    machineAllowancePct: percent,
  }),
  elements: fc.uniqueArray(element, { selector: ({ element: its }) => its, minLength: 1, maxLength: 3 }),
});

const columns = fc
  .tuple(
    fc.subarray(carriedColumns.filter((column) => column !== 'watch_s')),
    fc.uniqueArray(
      text.filter((each) => knownColumn(each) === null),
      { maxLength: 3 },
    ),
  )
  .map(([known, unknown]) => [...known, ...unknown]);

/** Rows of one or two studies as a readings table may hold them, all with the same carried columns. */
const table: fc.Arbitrary<StudyRow[]> = fc
  .tuple(fc.uniqueArray(study, { selector: ({ study: its }) => its, minLength: 1, maxLength: 2 }), columns)
  .chain(([studies, headers]) =>
    fc.array(
      fc
        .tuple(
          fc.constantFrom(...studies),
          fc.nat(),
          reading,
          fc.array(text, { minLength: headers.length, maxLength: headers.length }),
        )
        .map(
          ([{ study: title, terms, elements }, which, { time: observedMs, ...taken }, texts]): StudyRow => {
            const of = elements[which % elements.length]!;
            return {
              study: title,
              ...of,
              ...terms,
              cycle: taken.cycle,
              observedMs: taken.excluded === null ? (observedMs ?? 0) : observedMs,
              ratingPct: of.work === 'machine' ? 100 : taken.ratingPct,
              excluded: taken.excluded,
              carried: Object.fromEntries(headers.map((header, place) => [header, texts[place]!])),
            };
          },
        ),
      { minLength: 1, maxLength: 6 },
    ),
  );

const profile = fc.constantFrom('point' as const, 'comma' as const);

describe('a readings table that is written and read', () => {
  it('gives equal rows for 10,000 tables of hostile texts, with points and commas, with and without a mark', () => {
    fc.assert(
      fc.property(table, profile, fc.boolean(), (rows, form, byteOrderMark) => {
        const written = writeReadingsTable(rows, { profile: form, byteOrderMark });
        expect(readReadingsTable(written)).toMatchObject({ ok: true, profile: form, rows });
        // toMatchObject would let further carried columns pass.
        const read = readReadingsTable(new TextEncoder().encode(written), { profile: form });
        expect(read.ok && read.rows.map((row) => Object.entries(row.carried).sort())).toEqual(
          rows.map((row) => Object.entries(row.carried).sort()),
        );
      }),
      { numRuns: 10_000 },
    );
  });

  it('is split by another reader of RFC 4180 into the same cells: no row more, no cell moved', () => {
    fc.assert(
      fc.property(table, profile, (rows, form) => {
        const written = writeReadingsTable(rows, { profile: form });
        const { data, errors } = Papa.parse<string[]>(written, {
          delimiter: form === 'point' ? ',' : ';',
          newline: '\r\n',
        });
        expect(errors).toEqual([]);
        const [header, ...records] = data.slice(0, -1);
        expect(records).toHaveLength(rows.length);
        for (const [place, record] of records.entries()) {
          expect(record).toHaveLength(header!.length);
          const element = record[header!.indexOf('element')]!;
          expect(element).toBe(spreadsheetSafeText(rows[place]!.element));
        }
      }),
      { numRuns: 2_000 },
    );
  });

  it('leaves no text that a spreadsheet would run, and counts those it marked', () => {
    fc.assert(
      fc.property(table, (rows) => {
        const written = writeReadingsTable(rows, { profile: 'comma' });
        const cells = Papa.parse<string[]>(written, { delimiter: ';', newline: '\r\n' }).data.slice(1).flat();
        const marked = cells.filter((cell) => looksLikeFormula(cell));
        expect(marked.every((cell) => cell.startsWith("'"))).toBe(true);
        expect(marked).toHaveLength(countGuardedCells(rows));
      }),
      { numRuns: 2_000 },
    );
  });

  it('puts columns in the order of the trade sheet, and only the carried ones that are there', () => {
    const read = readReadingsTable('watch_s,note,Shade,element,cycle,study\r\n2.5,slow,"x;y",Load,1,A\r\n');
    expect(read.ok && writeReadingsTable(read.rows)).toBe(
      'study,cycle,element,observed_s,element_no,element_class,work,placement,units_per_occurrence,' +
        'parts_per_cycle,rating_pct,excluded,cause,allowance_pct,allowance_basis,machine_allowance_pct,' +
        'watch_s,note,Shade\r\n' +
        'A,1,Load,2.5,1,repetitive,manual,external,1,1,100,0,,0,normal_time,0,2.5,slow,x;y\r\n',
    );
    expect(read.ok && writeReadingsTable(read.rows, { profile: 'comma' }).split('\r\n')[1]).toBe(
      'A;1;Load;2,5;1;repetitive;manual;external;1;1;100;0;;0;normal_time;0;2,5;slow;"x;y"',
    );
  });

  it('has an empty cell where a row lacks a column that another row has', () => {
    const one = readReadingsTable('study,cycle,element,observed_s,note\r\nA,1,Load,1,slow\r\n');
    const two = readReadingsTable('study,cycle,element,observed_s,constructor\r\nB,1,Load,1,x\r\n');
    if (!one.ok || !two.ok) throw new Error('both tables are readable');
    const both = readReadingsTable(writeReadingsTable([...one.rows, ...two.rows]));
    expect(both.ok && both.rows.map((row) => row.carried)).toEqual([
      { note: 'slow', constructor: '' },
      { note: '', constructor: 'x' },
    ]);
  });

  it('is refused without rows, and for a carried column that would stand twice', () => {
    expect(() => writeReadingsTable([])).toThrow('writeReadingsTable requires at least one row');
    const read = readReadingsTable('study,cycle,element,observed_s\r\nA,1,Load,1\r\n');
    if (!read.ok) throw new Error('the table is readable');
    const twice = read.rows.map((row) => ({ ...row, carried: { rating_pct: '90' } }));
    expect(() => writeReadingsTable(twice)).toThrow(
      'writeReadingsTable requires carried columns that hold no figure of the table',
    );
  });
});

it('leaves empty what nobody decided of a foreign element, so that no sum over used or rated readings has it', () => {
  const rowsOf = (table: string) => {
    const read = readReadingsTable(new TextEncoder().encode(table));
    return read.ok ? read.rows : [];
  };
  // All that such a table leaves out is filled in as usual.
  const [plain] = rowsOf('study,cycle,element,observed_s\r\nA,1,Load,2\r\n');
  const row = (change: Partial<StudyRow>): StudyRow => ({ ...plain!, ...change });
  const foreign = { element: 'Talk', elementNo: 2, elementClass: 'foreign' } as const;
  const rows = [row({}), row(foreign), row({ ...foreign, cycle: 2, excluded: 'interruption' })];
  const table = writeReadingsTable(rows);
  const [head, ...lines] = table
    .trim()
    .split('\r\n')
    .map((line) => line.split(','));
  const cells = (column: string) => lines.map((line) => line[head!.indexOf(column)]);
  expect(cells('rating_pct')).toEqual(['100', '', '']);
  expect(cells('excluded')).toEqual(['0', '', '1']);
  expect(cells('work')).toEqual(['manual', '', '']);
  expect(cells('placement')).toEqual(['external', '', '']);
  expect(rows).toHaveLength(3);
  expect(rowsOf(table)).toEqual(rows);
});
