import { describe, expect, it } from 'vitest';
import type { StudyRow } from '../../src/domain/study/study-row';
import { readReadingsTable } from '../../src/exchange/read-readings-table';
import { writeReadingsTable } from '../../src/exchange/write-readings-table';

function rowsOf(table: string | Uint8Array): readonly StudyRow[] {
  const read = readReadingsTable(table);
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  return read.rows;
}

const table = (...lines: string[]) => lines.join('\r\n');

describe('readReadingsTable', () => {
  it('fills in what a table leaves out', () => {
    expect(rowsOf(table('study,cycle,element,observed_s', 'A,1,Load,8.5'))).toEqual([
      {
        study: 'A',
        cycle: 1,
        element: 'Load',
        elementNo: 1,
        elementClass: 'repetitive',
        work: 'manual',
        placement: 'external',
        unitsPerOccurrence: 1,
        partsPerCycle: 1,
        observedMs: 8500,
        ratingPct: 100,
        excluded: null,
        allowancePct: 0,
        allowanceBasis: 'normal_time',
        machineAllowancePct: 0,
        carried: {},
      },
    ]);
  });

  it('takes the same for a cell that is empty as for a column that is not there', () => {
    const short = table('study,cycle,element,observed_s', 'A,1,Load,8.5');
    const long = table(
      'study,cycle,element,observed_s,element_no,element_class,work,placement,units_per_occurrence,parts_per_cycle,rating_pct,excluded,cause,allowance_pct,allowance_basis,machine_allowance_pct',
      'A,1,Load,8.5,,,,,,,,,,,,',
    );
    expect(rowsOf(long)).toEqual(rowsOf(short));
  });

  it('numbers elements by first appearance in their own study', () => {
    const read = rowsOf(
      table('study,cycle,element,observed_s', 'A,1,Load,1', 'B,1,Bore,1', 'A,1,Bore,1', 'A,2,Load,1'),
    );
    expect(read.map(({ study, element, elementNo }) => [study, element, elementNo])).toEqual([
      ['A', 'Load', 1],
      ['B', 'Bore', 1],
      ['A', 'Bore', 2],
      ['A', 'Load', 1],
    ]);
  });

  it('takes an element’s number from any of its rows', () => {
    const read = rowsOf(
      table('study,cycle,element,observed_s,element_no', 'A,1,Bore,1,', 'A,1,Load,1,1', 'A,2,Bore,1,2'),
    );
    expect(read.map(({ elementNo }) => elementNo)).toEqual([2, 1, 2]);
  });

  it('reads columns in any order, with a byte order mark, blanks around words and numbers, and any line end', () => {
    const mixed = '\uFEFFobserved_s, cycle,element,study,work\nA'.replace(
      '\nA',
      '\n 1.5 , 2 ,Bore,A, machine \r',
    );
    const [row] = rowsOf(`${mixed}\r\n2,3,Bore,A,machine\n\n`);
    expect(row).toMatchObject({ study: 'A', cycle: 2, element: 'Bore', observedMs: 1500, work: 'machine' });
    expect(rowsOf(new TextEncoder().encode(mixed))).toEqual([row]);
  });

  it('takes the byte order mark for no part of the first header, be it one of ours or not', () => {
    const marked = '\uFEFFShade,study,cycle,element,observed_s\nblue,A,1,Load,1';
    for (const file of [marked, new TextEncoder().encode(marked)]) {
      expect(readReadingsTable(file)).toMatchObject({ ok: true, unknownColumns: ['Shade'] });
    }
  });

  it('takes times as differences of a watch that starts at 0 in every study', () => {
    const read = rowsOf(
      table('study,cycle,element,watch_s', 'A,1,Load,0.1', 'B,1,Load,7', 'A,1,Bore,0.3', 'A,2,Load,0.3'),
    );
    // 0.3 s − 0.1 s = 0.2 s; in doubles 300 − 100 is exact, and 0.3 − 0.1 would not be.
    expect(read.map(({ observedMs }) => observedMs)).toEqual([100, 7000, 200, 0]);
  });

  it('takes a difference exactly where the watch has tenths of a millisecond', () => {
    const read = rowsOf(table('study,cycle,element,watch_s', 'A,1,Load,1.0001', 'A,2,Load,1.0004'));
    // 1.0004 s − 1.0001 s = 0.3 ms; 1000.4 − 1000.1 in doubles is 0.2999999999999545.
    expect(read.map(({ observedMs }) => observedMs)).toEqual([1000.1, 0.3]);
  });

  it('puts the time of a break point that was not seen into the next row of the watch', () => {
    const read = rowsOf(
      table(
        'study,cycle,element,watch_s,excluded,cause',
        'A,1,Load,4,0,',
        'A,1,Bore,,1,missed break point',
        'A,1,Unload,12,1,missed break point',
        'A,2,Load,17,0,',
      ),
    );
    expect(read.map(({ observedMs }) => observedMs)).toEqual([4000, null, 8000, 5000]);
  });

  it('takes observed times where a study has both, and carries the watch', () => {
    const read = rowsOf(
      table('study,cycle,element,observed_s,watch_s', 'A,1,Load,3,4', 'B,1,Load,,4', 'B,2,Load,,9'),
    );
    expect(read.map(({ observedMs, carried }) => [observedMs, carried.watch_s])).toEqual([
      [3000, '4'],
      [4000, '4'],
      [5000, '9'],
    ]);
  });

  it('carries what says more about a reading, and columns it does not know, unchanged', () => {
    const read = readReadingsTable(
      table(
        'study,cycle,element,observed_s,part,note,Colour of day,__proto__,constructor',
        'A,1,Load,1,WD-1310," two, and ""more"" ",blue,odd,odder',
      ),
    );
    expect(read).toMatchObject({ ok: true, unknownColumns: ['Colour of day', '__proto__', 'constructor'] });
    expect(read.ok && Object.entries(read.rows[0]!.carried)).toEqual([
      ['part', 'WD-1310'],
      ['note', ' two, and "more" '],
      ['Colour of day', 'blue'],
      ['__proto__', 'odd'],
      ['constructor', 'odder'],
    ]);
  });

  it('keeps a cause beside a reading that is used, as a remark', () => {
    const [row] = rowsOf(table('study,cycle,element,observed_s,excluded,cause', 'A,1,Load,1,0,restored'));
    expect(row).toMatchObject({ excluded: null, carried: { cause: 'restored' } });
    expect(rowsOf(writeReadingsTable([row!]))).toEqual([row]);
  });

  it('gives texts back that were marked against being run as a formula', () => {
    const [row] = rowsOf(table('study,cycle,element,observed_s,note', "'=A,1,'-Load,1,''@x"));
    expect(row).toMatchObject({ study: '=A', element: '-Load', carried: { note: "'@x" } });
  });

  it('tells a table with semicolons and decimal commas by its header row', () => {
    const text = table('study;cycle;element;observed_s;watch_s', '"A;B, C";1;Load;1,25;3,5');
    expect(readReadingsTable(text)).toMatchObject({
      profile: 'comma',
      rows: [{ study: 'A;B, C', observedMs: 1250, carried: { watch_s: '3.5' } }],
    });
  });

  it('reads by the profile that was chosen', () => {
    const text = table('study,cycle,element,observed_s', 'A,1,Load,1');
    expect(readReadingsTable(text, { profile: 'comma' })).toMatchObject({
      ok: false,
      faults: [
        { code: 'column-missing' },
        { code: 'column-missing' },
        { code: 'column-missing' },
        { code: 'column-missing' },
      ],
    });
  });
});
