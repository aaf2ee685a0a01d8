import type { Cycle } from '../turn/turn';

type Made = Pick<Cycle, 'part' | 'partCode' | 'together'>;

/**
 * What tells the lines of a table of parts apart: the part, and how many were made at once, because a pair takes a time
 * a part that no single one takes.
 */
export function lineOfPart({ part, together }: Made): string {
  return part + atOnce(together);
}

/** The code of such a line. */
export function codeOfLine({ partCode, together }: Made): string {
  return partCode + atOnce(together);
}

function atOnce(together: number): string {
  return together > 1 ? ` ×${together}` : '';
}
