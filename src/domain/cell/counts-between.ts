/**
 * How many values lie between each two edges: at or above the lower one and below the upper one; the last two
 * edges take their upper one in. Values outside all edges are not counted.
 *
 * @param edges rising, two at least
 */
export function countsBetween(values: Iterable<number>, edges: readonly number[]): number[] {
  const counts = Array.from({ length: edges.length - 1 }, () => 0);
  const [low, high] = [edges[0]!, edges.at(-1)!];
  for (const value of values) {
    if (!(value >= low && value <= high)) continue;
    let place = 0;
    while (place < counts.length - 1 && value >= edges[place + 1]!) place += 1;
    counts[place]! += 1;
  }
  return counts;
}
