/**
 * A text that a spreadsheet would run as a formula, or that such a text would be mistaken for: any
 * apostrophes, then blanks and marks that cannot be seen, then a sign that begins a formula, also in its
 * full-width and small forms. Tab and line ends count as such signs: some spreadsheets split or drop them.
 */
const formulaLike = /^'*[\s\p{C}]*[=+\-@\t\r\n＝＋－＠﹦﹢﹣﹫]/u;

/** The text would be changed by `spreadsheetSafeText`. */
export function looksLikeFormula(text: string): boolean {
  return formulaLike.test(text);
}

/**
 * Neutralises a text for a spreadsheet with a leading apostrophe, where it looks like a formula. Only for
 * free text: a number we write ourselves is data, −0.12 included.
 *
 * `textFromSpreadsheet` gives every text back exactly, also one that began with apostrophes: the pattern
 * looks past any number of them, so what was marked is told from what was not by itself.
 * Source: OWASP, CSV Injection (the signs and the apostrophe).
 *
 * @example
 * spreadsheetSafeText('=1+1') // => "'=1+1"
 */
export function spreadsheetSafeText(text: string): string {
  return looksLikeFormula(text) ? `'${text}` : text;
}

/**
 * The text as it was before `spreadsheetSafeText`.
 *
 * @example
 * textFromSpreadsheet("'=1+1") // => '=1+1'
 */
export function textFromSpreadsheet(cell: string): string {
  return cell.startsWith("'") && looksLikeFormula(cell) ? cell.slice(1) : cell;
}
