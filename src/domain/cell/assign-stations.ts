/** Work to be given to a station. Any one unit of time. */
export interface StationTask {
  readonly name: string;
  readonly time: number;
  /** Names of tasks that must be done before it. */
  readonly after: readonly string[];
}

export type StationPlan =
  | {
      readonly ok: true;
      readonly stations: readonly (readonly StationTask[])[];
      /** Tasks that alone take longer than the takt: each has a station that cannot keep it. */
      readonly tooLong: readonly string[];
    }
  /** Tasks that wait for each other in a circle. */
  | { readonly ok: false; readonly loop: readonly string[] };

/** Which task goes first among those that fit: the one most others wait for, or with the most work behind it. */
export type StationRule = 'most-followers' | 'heaviest-weight';

/**
 * Assignment of tasks to stations under precedence: a station takes tasks, whose turn it is by the rule, as long as
 * they fit into the takt; then the next station is opened.
 *
 * Rules: most followers, ties by the longest time (Jacobs & Chase, Example 8.2); heaviest weight, a task's time
 * and that of all tasks after it (W. B. Helgeson and D. P. Birnie, "Assembly line balancing using the ranked
 * positional weighting technique", Journal of Industrial Engineering 12, 1961).
 * A heuristic: no rule finds the fewest stations always.
 *
 * @throws {RangeError} assignStations requires a takt above 0
 */
export function assignStations(
  tasks: readonly StationTask[],
  takt: number,
  rule: StationRule = 'most-followers',
): StationPlan {
  if (!(takt > 0)) throw new RangeError('assignStations requires a takt above 0');
  const loop = tasksInLoop(tasks);
  if (loop.length > 0) return { ok: false, loop };
  const rank = new Map(tasks.map((task) => [task.name, rankOf(task, tasks, rule)]));
  const left = new Set(tasks);
  const done = new Set<string>();
  const known = new Set(tasks.map(({ name }) => name));
  const stations: StationTask[][] = [];
  let station: StationTask[] = [];
  let used = 0;
  while (left.size > 0) {
    const open = [...left].filter(({ after }) => after.every((name) => done.has(name) || !known.has(name)));
    // A hair over is the rounding of a sum of decimals.
    const fits = open.filter(({ time }) => used + time <= takt * (1 + 1e-12));
    const [next] = (station.length === 0 && fits.length === 0 ? open : fits).sort(
      (a, b) => rank.get(b.name)! - rank.get(a.name)! || b.time - a.time,
    );
    if (!next) {
      stations.push(station);
      station = [];
      used = 0;
      continue;
    }
    left.delete(next);
    done.add(next.name);
    station.push(next);
    used += next.time;
  }
  if (station.length > 0) stations.push(station);
  const tooLong = tasks.filter(({ time }) => time > takt * (1 + 1e-12)).map(({ name }) => name);
  return { ok: true, stations, tooLong };
}

function rankOf(task: StationTask, tasks: readonly StationTask[], rule: StationRule): number {
  const behind = new Set<StationTask>();
  const follow = (name: string) => {
    for (const other of tasks) {
      if (!other.after.includes(name) || behind.has(other)) continue;
      behind.add(other);
      follow(other.name);
    }
  };
  follow(task.name);
  if (rule === 'most-followers') return behind.size;
  return [...behind].reduce((sum, { time }) => sum + time, task.time);
}

/** What is left when tasks that wait for nothing left are taken away again and again. */
function tasksInLoop(tasks: readonly StationTask[]): string[] {
  let left = [...tasks];
  for (;;) {
    const names = new Set(left.map(({ name }) => name));
    const waiting = left.filter(({ after }) => after.some((name) => names.has(name)));
    if (waiting.length === left.length) return left.map(({ name }) => name);
    left = waiting;
  }
}
