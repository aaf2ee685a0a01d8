/** A long study with its notes is 1 MB; below this much, other things on the tablet may fill the rest. */
export const LITTLE_BYTES = 50_000_000;
