/** The same items with the one of last time in front. */
export function lastFirst<T>(items: readonly T[], isLast: (item: T) => boolean): T[] {
  return [...items.filter(isLast), ...items.filter((item) => !isLast(item))];
}
