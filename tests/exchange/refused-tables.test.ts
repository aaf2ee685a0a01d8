import { describe, expect, it } from 'vitest';
import { readReadingsTable } from '../../src/exchange/read-readings-table';
import { tableFaultInWords } from '../../src/screens/records/fault-in-words';

/** The sentences a table is refused with. */
function refusal(table: string | Uint8Array): string[] {
  const read = readReadingsTable(table);
  return read.ok ? [] : read.faults.map(tableFaultInWords);
}

const rows = (header: string, ...lines: string[]) => [header, ...lines].join('\r\n');
const bytes = (...codes: number[]) => Uint8Array.from(codes);
const HEADER = 'study,cycle,element,observed_s';

describe('a table that cannot be read whole', () => {
  it.each([
    ['0 bytes', '', 'Line 1, column 1: the file is empty.'],
    ['nothing but line ends', '\r\n\r\n', 'Line 1, column 1: the file is empty.'],
    ['a header row alone', `${HEADER}\r\n`, 'Line 2, column study: no reading follows the header row.'],
    [
      'a missing column',
      rows('study,element,observed_s', 'A,Load,1'),
      'Line 1, column cycle: the header row has no such column.',
    ],
    [
      'neither of the two time columns',
      rows('study,cycle,element', 'A,1,Load'),
      'Line 1, column observed_s: the header row has no such column, and no watch_s in its place.',
    ],
    [
      'a column twice',
      rows(`${HEADER},note,note`, 'A,1,Load,1,,'),
      'Line 1, column note: the header row has this column twice.',
    ],
    [
      'an unknown column twice',
      rows(`${HEADER},Colour of day,Colour of day`, 'A,1,Load,1,,'),
      'Line 1, column "Colour of day": the header row has this column twice.',
    ],
    [
      'a text where a number belongs',
      rows(HEADER, 'A,1,Load,1', 'A,2,Load,twelve'),
      'Line 3, column observed_s: "twelve" is not a number with a decimal point.',
    ],
    [
      'a decimal comma in a table with points',
      rows(HEADER, 'A,1,Load,"1,5"'),
      'Line 2, column observed_s: "1,5" is not a number with a decimal point.',
    ],
    [
      'a decimal point in a table with commas',
      rows('study;cycle;element;observed_s', 'A;1;Load;1.5'),
      'Line 2, column observed_s: "1.5" is not a number with a decimal comma.',
    ],
    [
      'a machine element rated 110',
      rows(`${HEADER},work,rating_pct`, 'A,1,Load,1,manual,110', 'A,1,Bore,9,machine,110'),
      'Line 3, column rating_pct: a machine element is rated 100 only, and this row says 110.',
    ],
    [
      'a machine element rated 110 in a row that is left out',
      rows(`${HEADER},work,rating_pct,excluded,cause`, 'A,1,Bore,9,machine,110,1,fault'),
      'Line 2, column rating_pct: a machine element is rated 100 only, and this row says 110.',
    ],
    [
      'a negative time',
      rows(HEADER, 'A,1,Load,-0.5'),
      'Line 2, column observed_s: "-0.5" is not a time from 0 to below 1000000000 s.',
    ],
    [
      'a time without end',
      rows(HEADER, 'A,1,Load,1e400'),
      'Line 2, column observed_s: "1e400" is not a number with a decimal point.',
    ],
    [
      'an empty time in a row that is used',
      rows(HEADER, 'A,1,Load,1', 'A,2,Load,'),
      'Line 3, column observed_s: the time is missing, and only an excluded row may go without.',
    ],
    [
      'an empty watch in a row that is used',
      rows('study,cycle,element,watch_s', 'A,1,Load,1', 'A,2,Load,'),
      'Line 3, column watch_s: the time is missing, and only an excluded row may go without.',
    ],
    [
      'a watch that runs backwards',
      rows('study,cycle,element,watch_s', 'A,1,Load,12.5', 'A,2,Load,12.25'),
      'Line 3, column watch_s: the watch runs backwards, from 12.5 to 12.25.',
    ],
    [
      'an exclusion without a cause',
      rows(`${HEADER},excluded,cause`, 'A,1,Load,1,1, '),
      'Line 2, column cause: a reading is excluded for a cause only, and the cell is empty.',
    ],
    [
      'an exclusion without a column for its cause',
      rows(`${HEADER},excluded`, 'A,1,Load,1,1'),
      'Line 2, column cause: a reading is excluded for a cause only, and the cell is empty.',
    ],
    [
      'excluded neither 0 nor 1',
      rows(`${HEADER},excluded`, 'A,1,Load,1,yes'),
      'Line 2, column excluded: "yes" is not one of 0, 1.',
    ],
    [
      'a cycle that is no whole number',
      rows(HEADER, 'A,1.5,Load,1'),
      'Line 2, column cycle: "1.5" is not a whole number from 1 to 1000000000.',
    ],
    [
      'a cycle 0',
      rows(HEADER, 'A,0,Load,1'),
      'Line 2, column cycle: "0" is not a whole number from 1 to 1000000000.',
    ],
    [
      'no cycle',
      rows(HEADER, 'A,,Load,1'),
      'Line 2, column cycle: the cell is empty, and every row needs one.',
    ],
    [
      'no study',
      rows(HEADER, ',1,Load,1'),
      'Line 2, column study: the cell is empty, and every row needs one.',
    ],
    [
      'no element',
      rows(HEADER, 'A,1," ",1'),
      'Line 2, column element: the cell is empty, and every row needs one.',
    ],
    [
      'an unknown class',
      rows(`${HEADER},element_class`, 'A,1,Load,1,rare'),
      'Line 2, column element_class: "rare" is not one of repetitive, occasional, foreign.',
    ],
    [
      'an unknown kind of work',
      rows(`${HEADER},work`, 'A,1,Load,1,robot'),
      'Line 2, column work: "robot" is not one of manual, machine, walking, attention.',
    ],
    [
      'an unknown placement',
      rows(`${HEADER},placement`, 'A,1,Load,1,inside'),
      'Line 2, column placement: "inside" is not one of external, internal.',
    ],
    [
      'an occasional element once in no units',
      rows(`${HEADER},units_per_occurrence`, 'A,1,Load,1,0'),
      'Line 2, column units_per_occurrence: "0" is not a number of work units above 0 and of at most 1000000000.',
    ],
    [
      'half a part per cycle',
      rows(`${HEADER},parts_per_cycle`, 'A,1,Load,1,0.5'),
      'Line 2, column parts_per_cycle: "0.5" is not a whole number from 1 to 1000000000.',
    ],
    [
      'a rating of 0',
      rows(`${HEADER},rating_pct`, 'A,1,Load,1,0'),
      'Line 2, column rating_pct: "0" is not a rating above 0 and of at most 1000.',
    ],
    [
      'an allowance below 0',
      rows(`${HEADER},allowance_pct`, 'A,1,Load,1,-1'),
      'Line 2, column allowance_pct: "-1" is not a percentage from 0 to 1000.',
    ],
    [
      'a whole shift of allowance',
      rows(`${HEADER},allowance_pct,allowance_basis`, 'A,1,Load,1,100,shift'),
      'Line 2, column allowance_pct: "100" is not a percentage from 0 to below 100, being a share of the shift.',
    ],
    [
      'an unknown basis',
      rows(`${HEADER},allowance_basis`, 'A,1,Load,1,job'),
      'Line 2, column allowance_basis: "job" is not one of normal_time, shift.',
    ],
    [
      'an allowance that changes within a study',
      rows(`${HEADER},allowance_pct`, 'A,1,Load,1,15', 'B,1,Load,1,12', 'A,2,Load,1,14'),
      'Line 4, column allowance_pct: this row says "14", and line 2 "15", for the same study "A".',
    ],
    [
      'a basis that changes within a study',
      rows(`${HEADER},allowance_basis`, 'A,1,Load,1,shift', 'A,2,Load,1,'),
      'Line 3, column allowance_basis: this row says "normal_time", and line 2 "shift", for the same study "A".',
    ],
    [
      'a machine allowance that changes within a study',
      rows(`${HEADER},machine_allowance_pct`, 'A,1,Load,1,4', 'A,2,Load,1,5'),
      'Line 3, column machine_allowance_pct: this row says "5", and line 2 "4", for the same study "A".',
    ],
    [
      'an element that changes its class',
      rows(`${HEADER},element_class`, 'A,1,Load,1,', 'A,2,Load,1,foreign'),
      'Line 3, column element_class: this row says "foreign", and line 2 "repetitive", for the same element "Load".',
    ],
    [
      'an element that changes its kind of work',
      rows(`${HEADER},work`, 'A,1,Bore,1,machine', 'A,2,Bore,1,manual'),
      'Line 3, column work: this row says "manual", and line 2 "machine", for the same element "Bore".',
    ],
    [
      'an element that changes its placement',
      rows(`${HEADER},placement`, 'A,1,Load,1,external', 'A,2,Load,1,internal'),
      'Line 3, column placement: this row says "internal", and line 2 "external", for the same element "Load".',
    ],
    [
      'an element that changes its frequency',
      rows(`${HEADER},units_per_occurrence`, 'A,1,Load,1,8', 'A,2,Load,1,20'),
      'Line 3, column units_per_occurrence: this row says "20", and line 2 "8", for the same element "Load".',
    ],
    [
      'an element that changes its parts per cycle',
      rows(`${HEADER},parts_per_cycle`, 'A,1,Load,1,2', 'A,2,Load,1,3'),
      'Line 3, column parts_per_cycle: this row says "3", and line 2 "2", for the same element "Load".',
    ],
    [
      'an element that changes its number',
      rows(`${HEADER},element_no`, 'A,1,Load,1,1', 'A,2,Load,1,2'),
      'Line 3, column element_no: this row says "2", and line 2 "1", for the same element "Load".',
    ],
    [
      'a row with too few cells',
      rows(HEADER, 'A,1,Load,1', 'A,2,Load'),
      'Line 3, column observed_s: the row has 3 cells, and the header row has 4.',
    ],
    [
      'a row with too many cells',
      rows(HEADER, 'A,1,Load,1,5'),
      'Line 2, column 5: the row has 5 cells, and the header row has 4.',
    ],
    [
      'a quote that is never closed',
      rows(HEADER, 'A,1,Load,1', 'A,2,"Load,1', 'A,3,Load,1'),
      'Line 3, column element: a cell begins with a quotation mark, and none closes it before the file ends.',
    ],
    [
      'a quote in the middle of a cell',
      rows(HEADER, 'A,1,5" pipe,1'),
      'Line 2, column element: a quotation mark stands inside a cell that does not begin with one.',
    ],
    [
      'text behind a closing quote',
      rows(HEADER, 'A,1,"Load" door,1'),
      'Line 2, column element: more text follows the quotation mark that closes the cell.',
    ],
  ])('%s: one sentence with line and column', (_, table, sentence) => {
    expect(refusal(table)).toEqual([sentence]);
  });

  const notText =
    'this is not text in UTF-8, so the file is no readings table or was saved in another character set.';

  it.each([
    // First bytes of the formats: PNG (W3C), JPEG (JFIF), GIF89a with a black screen of 1 × 1.
    [
      'a PNG renamed .csv',
      bytes(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a),
      `Line 1, column 1: ${notText}`,
    ],
    ['a JPEG renamed .csv', bytes(0xff, 0xd8, 0xff, 0xe0, 0x00, 0x10), `Line 1, column 1: ${notText}`],
    [
      'a GIF renamed .csv',
      bytes(0x47, 0x49, 0x46, 0x38, 0x39, 0x61, 1, 0, 1, 0),
      `Line 1, column 1: ${notText}`,
    ],
    ['a table in UTF-16', bytes(0xff, 0xfe, 0x73, 0x00, 0x74, 0x00), `Line 1, column 1: ${notText}`],
    [
      // “Fräsen” in Windows-1252, where ä is the one byte E4.
      'a table in a Western single-byte character set',
      Uint8Array.from(Buffer.from(rows(HEADER, 'A,1,Load,1', 'A,1,Fr\u00E4sen,1'), 'latin1')),
      `Line 3, column element: ${notText}`,
    ],
    ['a text with a NUL in it', rows(HEADER, 'A,1,Lo\0ad,1'), `Line 2, column element: ${notText}`],
  ])('%s: one sentence with line and column', (_, table, sentence) => {
    expect(refusal(table)).toEqual([sentence]);
  });

  it('is refused whole: every fault is named in the order of the file, and no row is given', () => {
    const table = rows(
      `${HEADER},work,rating_pct`,
      'A,1,Load,1,manual,100',
      'A,one,Load,x,manual,100',
      'A,2,Bore,-1,machine,95',
    );
    const read = readReadingsTable(table);
    expect(read).not.toHaveProperty('rows');
    expect(refusal(table).map((sentence) => sentence.split(':')[0])).toEqual([
      'Line 3, column cycle',
      'Line 3, column observed_s',
      'Line 4, column rating_pct',
      'Line 4, column observed_s',
    ]);
  });

  it('names the physical line where quoted cells hold line ends, that of the cell and not of the row', () => {
    const table =
      'study,cycle,element,note,observed_s\r\nA,1,Load,"two\r\nlines",1\r\nA,2,Load,"one\nmore",x\r\n';
    expect(refusal(table)).toEqual(['Line 5, column observed_s: "x" is not a number with a decimal point.']);
  });

  it('says it on one line and in few words, whatever the cell holds', () => {
    const [sentence] = refusal(rows(HEADER, `A,1,Load,"${'long\n'.repeat(100)}"`));
    expect(sentence).not.toContain('\n');
    expect(sentence!.length).toBeLessThan(150);
  });
});
