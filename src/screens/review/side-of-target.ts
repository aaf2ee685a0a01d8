/** Where a share of the target lies, told only as finely as it is printed: whole per cent. */
export function sideOfTarget(share: number): 'inside' | 'over' | 'level' {
  const percent = Math.round(share * 100);
  return percent < 100 ? 'inside' : percent > 100 ? 'over' : 'level';
}
