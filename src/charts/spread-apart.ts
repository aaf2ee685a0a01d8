/**
 * Places for labels that would lie on each other: each as near to where it belongs as the distance between two
 * allows, in the order in which they belong, none below `low` or above `high` as long as there is room.
 *
 * @throws {RangeError} spreadApart requires a distance of 0 or more
 * @example
 * spreadApart([100, 104], 20, { low: 0, high: 300 }) // => [92, 112]
 */
export function spreadApart(
  wanted: readonly number[],
  distance: number,
  { low, high }: { low: number; high: number },
): number[] {
  if (!(distance >= 0)) throw new RangeError('spreadApart requires a distance of 0 or more');
  const order = wanted.map((place, index) => ({ place, index })).sort((a, b) => a.place - b.place);
  // Groups of labels that touch are moved as one, about the middle of where they belong.
  const groups: { sum: number; count: number; members: number[] }[] = [];
  const topOf = ({ sum, count }: { sum: number; count: number }) => {
    const first = sum / count - ((count - 1) * distance) / 2;
    return Math.max(low, Math.min(first, high - (count - 1) * distance));
  };
  for (const { place, index } of order) {
    let group = { sum: place, count: 1, members: [index] };
    for (;;) {
      const above = groups.at(-1);
      if (!above || topOf(above) + above.count * distance <= topOf(group)) break;
      groups.pop();
      group = {
        sum: above.sum + group.sum,
        count: above.count + group.count,
        members: [...above.members, ...group.members],
      };
    }
    groups.push(group);
  }
  const places: number[] = [];
  for (const group of groups) {
    for (const [place, index] of group.members.entries()) places[index] = topOf(group) + place * distance;
  }
  return places;
}
