/** Nothing that a hand makes and taps takes less: a shorter target is a slip of the finger. */
export const SHORTEST_TARGET_MS = 1_000;
/** A target longer than a day is a slip of the finger too. */
export const LONGEST_TARGET_MS = 86_400_000;
