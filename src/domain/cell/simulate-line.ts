/** Stations one behind the other. Any one unit of time. */
export interface Line {
  /** The next part's time at each station, drawn when its turn comes: part by part, station by station. */
  readonly stations: readonly (() => number)[];
  /** Places for waiting parts before each station but the first; Infinity where it never fills. */
  readonly buffers: readonly number[];
  /** Time from one arrival to the next; left out where the first station never lacks a part. */
  readonly arrival?: () => number;
}

/** When each part came, began and left; in the order of the parts. */
export interface LineRun {
  readonly arrived: Float64Array;
  /** Began at the first station. */
  readonly began: Float64Array;
  readonly left: Float64Array;
}

/**
 * Simulation of a line by discrete events, blocking after service: a finished part stays on its station until the
 * next place is free.
 *
 * Parts cannot overtake, so every event follows from those of the part before and of the station after, and no
 * queue of events is needed:
 *   begin(n, k) = max(leave(n, k − 1), leave(n − 1, k)); end = begin + time
 *   leave(n, k) = max(end, leave(n − b − 1, k + 1))     b  places before station k + 1
 *
 * @throws {RangeError} simulateLine requires at least one station, and a buffer of whole places between any two
 * @throws {RangeError} simulateLine requires a whole number of parts from 1
 */
export function simulateLine({ stations, buffers, arrival }: Line, parts: number): LineRun {
  const areBuffers = buffers.every(
    (places) => places === Infinity || (Number.isInteger(places) && places >= 0),
  );
  if (stations.length === 0 || buffers.length !== stations.length - 1 || !areBuffers) {
    throw new RangeError(
      'simulateLine requires at least one station, and a buffer of whole places between any two',
    );
  }
  if (!(Number.isInteger(parts) && parts >= 1)) {
    throw new RangeError('simulateLine requires a whole number of parts from 1');
  }
  const arrived = new Float64Array(parts);
  const began = new Float64Array(parts);
  const leave = stations.map(() => new Float64Array(parts));
  let clock = 0;
  for (let n = 0; n < parts; n += 1) {
    if (arrival) clock += arrival();
    let at = arrival ? clock : n > 0 ? leave[0]![n - 1]! : 0;
    arrived[n] = at;
    for (let k = 0; k < stations.length; k += 1) {
      const own = leave[k]!;
      const begin = n > 0 ? Math.max(at, own[n - 1]!) : at;
      if (k === 0) began[n] = begin;
      at = begin + stations[k]!();
      const freed = k < buffers.length ? n - buffers[k]! - 1 : -1;
      if (freed >= 0) at = Math.max(at, leave[k + 1]![freed]!);
      own[n] = at;
    }
  }
  return { arrived, began, left: leave.at(-1)! };
}
