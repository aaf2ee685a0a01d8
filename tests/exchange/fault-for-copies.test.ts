import { describe, expect, it } from 'vitest';
import { recordLine } from '../../src/domain/records/record-line';
import { LONGEST_LINE_BYTES } from '../../src/exchange/backup-lines';
import { faultForCopies } from '../../src/exchange/fault-for-copies';
import { readReadingsTable } from '../../src/exchange/read-readings-table';
import { tableFaultInWords } from '../../src/screens/records/fault-in-words';
import { recordAt } from '../support/records';

function tableOf(header: string, rows: readonly string[]) {
  const read = readReadingsTable([header, ...rows].join('\n'));
  if (!read.ok) throw new Error(read.faults.map(tableFaultInWords).join(' '));
  return read;
}
const MEBIBYTE = 1 << 20;
const cycles = (count: number, study: string) =>
  Array.from({ length: count }, (_, place) => `${study},${place + 1},Load,3,`);

describe('a table whose studies a copy could not hold', () => {
  it('is refused where a header of every row makes one record longer than a line may be', () => {
    const header = `study,cycle,element,observed_s,${'h'.repeat(200_000)}`;
    const table = tableOf(header, cycles(340, 'A'));
    expect(tableFaultInWords(faultForCopies(table)!)).toBe(
      'Line 1, column study: one study of the table is longer than a copy can hold.',
    );
    expect(faultForCopies(tableOf(header, [...cycles(170, 'A'), ...cycles(170, 'B')]))).toBeNull();
  });

  it('is refused with a column whose name every copy refuses, and is taken with any other', () => {
    const header = 'study,cycle,element,observed_s';
    const fault = faultForCopies(tableOf(`${header},__proto__`, cycles(1, 'A')));
    expect(tableFaultInWords(fault!)).toMatch(
      /^Line 1, column __proto__: "__proto__" is not one of watch_s, /,
    );
    expect(faultForCopies(tableOf(`${header},constructor`, cycles(1, 'A')))).toBeNull();
  });

  it('is refused before the reader of a copy would refuse it: the name of a study counts once more', () => {
    const study = 's'.repeat(MEBIBYTE);
    const header = 'study,cycle,element,observed_s,note';
    expect(faultForCopies(tableOf(header, cycles(63, study)))).not.toBeNull();
    const most = tableOf(header, cycles(62, study));
    expect(faultForCopies(most)).toBeNull();
    const fact = {
      kind: 'study-imported',
      starts: 'study',
      study,
      fileName: 'table.csv',
      rows: most.rows,
    } as const;
    const line = `${recordLine(recordAt(1, 0, 't:1', fact))}\n`;
    expect(new TextEncoder().encode(line).length).toBeLessThanOrEqual(LONGEST_LINE_BYTES);
  });
});
