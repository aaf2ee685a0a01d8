import type { Part } from '../../domain/shop/shop';

/** Code and name of a part; a part that the shop no longer has keeps the code it was recorded under. */
export function partTitle(
  parts: readonly Part[],
  { part, partCode }: { part: string; partCode: string },
): string {
  const name = parts.find(({ id }) => id === part)?.name;
  return name ? `${partCode} ${name}` : partCode;
}
