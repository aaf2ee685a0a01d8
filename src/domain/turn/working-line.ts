/** From where to where in a turn, milliseconds since it began. */
interface Stretch {
  readonly fromMs: number;
  readonly toMs: number;
}

/** Where work that begins at a place ends, when it stands still in each of some breaks. Breaks may overlap. */
export function endOfWork(fromMs: number, workMs: number, breaks: readonly Stretch[]): number {
  let [atMs, leftMs] = [fromMs, workMs];
  for (const each of [...breaks].sort((a, b) => a.fromMs - b.fromMs)) {
    if (each.toMs <= atMs) continue;
    const untilMs = Math.max(0, each.fromMs - atMs);
    if (leftMs < untilMs) break;
    leftMs -= untilMs;
    atMs = each.toMs;
  }
  return atMs + leftMs;
}

/** Working time from a place to another, breaks out. Breaks may overlap. */
export function workBetween(fromMs: number, toMs: number, breaks: readonly Stretch[]): number {
  let [atMs, workMs] = [fromMs, 0];
  for (const each of [...breaks].sort((a, b) => a.fromMs - b.fromMs)) {
    if (each.toMs <= atMs) continue;
    if (each.fromMs >= toMs) break;
    workMs += Math.max(0, each.fromMs - atMs);
    atMs = each.toMs;
  }
  return workMs + Math.max(0, toMs - atMs);
}
