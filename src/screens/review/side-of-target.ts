/** Where a share of the target lies, told only as finely as it is printed: whole per cent. */
export function sideOfTarget(share: number): 'faster' | 'slower' | 'level' {
  const percent = Math.round(share * 100);
  return percent < 100 ? 'faster' : percent > 100 ? 'slower' : 'level';
}
