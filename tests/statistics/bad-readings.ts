/** Lists of readings that no function may turn into a number, with the way in which each is bad. */
export const badReadings: readonly (readonly [string, readonly number[]])[] = [
  ['none at all', []],
  ['NaN among them', [1, 2, Number.NaN, 4, 5, 6, 7, 8, 9, 10, 11]],
  ['Infinity among them', [1, 2, 3, Number.POSITIVE_INFINITY, 5, 6, 7, 8, 9, 10, 11]],
  ['minus Infinity among them', [1, 2, 3, Number.NEGATIVE_INFINITY, 5, 6, 7, 8, 9, 10, 11]],
  ['1e308, whose square is past every double', [1e308, 1e308, 1e308, 1, 2, 3, 4, 5, 6, 7, 8]],
];

/** Confidences and significances that are none. */
export const badFractions: readonly number[] = [0, 1, -0.5, 95, Number.NaN, Number.POSITIVE_INFINITY];

/** The shape of every message: one sentence that begins with the function and its rule. */
export const saysRule = (name: string) => new RegExp(`^${name} requires (?!.*\\. ).+[^.]$`);
