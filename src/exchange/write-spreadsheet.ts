import { strToU8, zipSync } from 'fflate';
import type { TableColumn, TypedTable } from './typed-table';

/** The media type of a spreadsheet file after ECMA-376 (Office Open XML). */
export const SPREADSHEET_TYPE = 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet';

const HEAD = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';
const MAIN = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
const LINKS = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
const PACKAGE = 'http://schemas.openxmlformats.org/package/2006';
const TYPE = 'application/vnd.openxmlformats-officedocument.spreadsheetml';
const DAY_MS = 86_400_000;
/** A cell's style: plain, head, day, whole, then numbers of 0 to 6 decimals. */
const PLAIN = 0;
const BOLD = 1;
const DAY = 2;
const NUMBERS = 3;
const MOST_DECIMALS = 6;

/**
 * Writes tables as one spreadsheet file (ECMA-376), a sheet each, with typed cells: a day is a day, a number a
 * number with the decimals of its column, a text a text that nothing runs. The first sheet says what the file is.
 *
 * The package is zipped by a library; the sheets are lines of XML.
 */
export function writeSpreadsheet(
  about: readonly string[],
  tables: readonly TypedTable[],
): Uint8Array<ArrayBuffer> {
  const first: TypedTable = {
    name: 'about',
    columns: [{ name: 'about', kind: 'text' }],
    rows: about.map((line) => [line]),
  };
  const sheets = [first, ...tables];
  const numbered = sheets.map((_, place) => place + 1);
  const files: Record<string, string> = {
    '[Content_Types].xml': `${HEAD}<Types xmlns="${PACKAGE}/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Override PartName="/xl/workbook.xml" ContentType="${TYPE}.sheet.main+xml"/><Override PartName="/xl/styles.xml" ContentType="${TYPE}.styles+xml"/>${numbered.map((no) => `<Override PartName="/xl/worksheets/sheet${no}.xml" ContentType="${TYPE}.worksheet+xml"/>`).join('')}</Types>`,
    '_rels/.rels': `${HEAD}<Relationships xmlns="${PACKAGE}/relationships"><Relationship Id="rId1" Type="${LINKS}/officeDocument" Target="xl/workbook.xml"/></Relationships>`,
    'xl/workbook.xml': `${HEAD}<workbook xmlns="${MAIN}" xmlns:r="${LINKS}"><sheets>${sheets.map(({ name }, place) => `<sheet name="${escaped(name)}" sheetId="${place + 1}" r:id="rId${place + 1}"/>`).join('')}</sheets></workbook>`,
    'xl/_rels/workbook.xml.rels': `${HEAD}<Relationships xmlns="${PACKAGE}/relationships">${numbered.map((no) => `<Relationship Id="rId${no}" Type="${LINKS}/worksheet" Target="worksheets/sheet${no}.xml"/>`).join('')}<Relationship Id="rId${sheets.length + 1}" Type="${LINKS}/styles" Target="styles.xml"/></Relationships>`,
    'xl/styles.xml': styles(),
  };
  for (const [place, table] of sheets.entries()) {
    files[`xl/worksheets/sheet${place + 1}.xml`] = sheetXml(table);
  }
  const entries = Object.entries(files).map(([name, text]) => [name, strToU8(text)]);
  return Uint8Array.from(zipSync(Object.fromEntries(entries)));
}

function styles(): string {
  const formats = Array.from({ length: MOST_DECIMALS + 1 }, (_, decimals) => numberFormat(decimals));
  const cells = ['0', '0" fontId="1" applyFont="1', '164" applyNumberFormat="1'].concat(
    formats.map((_, place) => `${165 + place}" applyNumberFormat="1`),
  );
  return `${HEAD}<styleSheet xmlns="${MAIN}"><numFmts count="${formats.length + 1}"><numFmt numFmtId="164" formatCode="yyyy\\-mm\\-dd"/>${formats.map((format, place) => `<numFmt numFmtId="${165 + place}" formatCode="${format}"/>`).join('')}</numFmts><fonts count="2"><font><sz val="11"/><name val="Calibri"/></font><font><b/><sz val="11"/><name val="Calibri"/></font></fonts><fills count="2"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill></fills><borders count="1"><border/></borders><cellStyleXfs count="1"><xf/></cellStyleXfs><cellXfs count="${cells.length}">${cells.map((cell) => `<xf numFmtId="${cell}"/>`).join('')}</cellXfs></styleSheet>`;
}

function numberFormat(decimals: number): string {
  return decimals === 0 ? '0' : `0.${'0'.repeat(decimals)}`;
}

function sheetXml({ columns, rows }: TypedTable): string {
  const head = columns.map(({ name }, place) => textCell(name, `${letters(place)}1`, BOLD)).join('');
  const body = rows.map((row, line) => {
    const cells = columns.map((column, place) =>
      cellXml(row[place] ?? null, column, `${letters(place)}${line + 2}`),
    );
    return `<row r="${line + 2}">${cells.join('')}</row>`;
  });
  const widths = columns.map(
    ({ name }, place) =>
      `<col min="${place + 1}" max="${place + 1}" width="${Math.min(60, Math.max(10, name.length + 2))}" customWidth="1"/>`,
  );
  return `${HEAD}<worksheet xmlns="${MAIN}"><sheetViews><sheetView workbookViewId="0"><pane ySplit="1" topLeftCell="A2" activePane="bottomLeft" state="frozen"/></sheetView></sheetViews><cols>${widths.join('')}</cols><sheetData><row r="1">${head}</row>${body.join('')}</sheetData></worksheet>`;
}

function cellXml(value: string | number | null, { kind, decimals = 0 }: TableColumn, at: string): string {
  if (value === null) return '';
  if (typeof value === 'number') {
    return `<c r="${at}" s="${NUMBERS + Math.min(decimals, MOST_DECIMALS)}"><v>${value}</v></c>`;
  }
  const ms = kind === 'day' ? Date.parse(value) : Number.NaN;
  if (Number.isNaN(ms)) return textCell(value, at, PLAIN);
  // Days since 30 December 1899, as spreadsheets count them from March 1900 on.
  return `<c r="${at}" s="${DAY}"><v>${ms / DAY_MS + 25_569}</v></c>`;
}

function textCell(value: string, at: string, style: number): string {
  return `<c r="${at}" s="${style}" t="inlineStr"><is><t xml:space="preserve">${escaped(value)}</t></is></c>`;
}

/** A, B … Z, AA … */
function letters(place: number): string {
  const last = String.fromCharCode(65 + (place % 26));
  return place < 26 ? last : letters(Math.floor(place / 26) - 1) + last;
}

/** Characters that XML has no way to write are left out: half of a pair, and control characters. */
function escaped(text: string): string {
  return (
    text
      // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what XML cannot hold
      .replace(/[\x00-\x08\x0B\x0C\x0E-\x1F\uFFFE\uFFFF\p{Surrogate}]/gu, '')
      .replaceAll('&', '&amp;')
      .replaceAll('<', '&lt;')
      .replaceAll('>', '&gt;')
      .replaceAll('"', '&quot;')
  );
}
