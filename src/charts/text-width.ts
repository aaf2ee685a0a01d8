/**
 * Width of a letter in proportion to the size of the type. Measured on "WD-2230V 0123456789 target median" in
 * DejaVu Sans, the widest of the page's typefaces: 0.61.
 */
const LETTER = 0.62;

/** About how wide a text is, in pixels: wide enough never to be less than it is drawn. */
export function textWidth(text: string, typePx: number): number {
  return [...text].length * LETTER * typePx;
}

/** The text, or as much of it as fits, with an ellipsis. */
export function fittedText(text: string, roomPx: number, typePx: number): string {
  if (textWidth(text, typePx) <= roomPx) return text;
  const letters = Math.max(1, Math.floor(roomPx / (LETTER * typePx)) - 1);
  return `${[...text].slice(0, letters).join('').trimEnd()}…`;
}
