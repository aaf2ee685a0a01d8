import { atStandingMachine } from './at-standing-machine';
import type { CellElement, CellWork } from './cell-work';

/** What somebody or something does between two moments of the cycle. */
export interface Activity {
  /** The element; empty while waiting. */
  readonly name: string;
  readonly state: 'working' | 'attending' | 'waiting';
  readonly fromMs: number;
  readonly toMs: number;
}

/** One column of the chart: a person or a machine. */
export interface ActivityLane {
  readonly who: 'operator' | 'machine' | 'other';
  /** 1, 2 … among the machines. */
  readonly number: number;
  /** From 0 to the end of the cycle without a gap. */
  readonly activities: readonly Activity[];
  readonly workingMs: number;
  readonly waitingMs: number;
}

/** The multiple-activity chart: one repeating round. */
export interface ActivityChart {
  readonly roundMs: number;
  /** Parts that one round gives. */
  readonly parts: number;
  readonly lanes: readonly ActivityLane[];
}

/**
 * The multiple-activity chart from mean times: what the operator does, what each machine does beside it, and who
 * waits for whom. The operator serves one machine after another; a machine stands while it is served, runs, and
 * waits until it is its turn again.
 *
 * Formula: round = max(l + m, N·(l + w), N·o)
 *   l  operator at the standing machine; w  operator beside the running one; m  machine; o  another person
 */
export function activityChart({ elements }: CellWork, machines = 1): ActivityChart {
  const of = (place: CellElement['place']) => elements.filter((element) => element.place === place);
  const external = atStandingMachine(elements);
  const [internal, machine, other] = [of('internal'), of('machine'), of('other')];
  const [l, w, m, o] = [external, internal, machine, other].map(total) as [number, number, number, number];
  const hasMachine = machine.length > 0;
  const roundMs = Math.max(l + m, machines * (l + w), machines * o);
  const rounds = Array.from({ length: machines }, (_, place) => place);
  const operator = rounds.flatMap((place) => inARow([...external, ...internal], place * (l + w)));
  const lanes = [lane('operator', 1, operator, roundMs)];
  if (hasMachine) {
    for (const place of rounds) {
      const running = inARow(machine, place * (l + w) + l).flatMap((run) => wrapped(run, roundMs));
      lanes.push(lane('machine', place + 1, running, roundMs));
    }
  }
  if (other.length > 0) {
    const activities = rounds.flatMap((place) => inARow(other, place * o));
    lanes.push(lane('other', 1, activities, roundMs));
  }
  return { roundMs, parts: machines, lanes };
}

const total = (elements: readonly CellElement[]) => elements.reduce((sum, { meanMs }) => sum + meanMs, 0);

function inARow(elements: readonly CellElement[], fromMs: number): Activity[] {
  let atMs = fromMs;
  return elements.map(({ name, work, meanMs }) => {
    const began = atMs;
    atMs += meanMs;
    return { name, state: work === 'attention' ? 'attending' : 'working', fromMs: began, toMs: atMs };
  });
}

/** A machine that still runs when the round ends goes on at its beginning. */
function wrapped(run: Activity, roundMs: number): Activity[] {
  if (run.fromMs >= roundMs) return [{ ...run, fromMs: run.fromMs - roundMs, toMs: run.toMs - roundMs }];
  // A hair past the end is the rounding of a sum, not another round.
  if (run.toMs <= roundMs * (1 + 1e-12)) return [{ ...run, toMs: Math.min(run.toMs, roundMs) }];
  return [
    { ...run, fromMs: 0, toMs: run.toMs - roundMs },
    { ...run, toMs: roundMs },
  ];
}

/** Fills what lies between the activities with waiting. */
function lane(
  who: ActivityLane['who'],
  number: number,
  doing: readonly Activity[],
  roundMs: number,
): ActivityLane {
  const inOrder = doing.filter(({ fromMs, toMs }) => toMs > fromMs).sort((a, b) => a.fromMs - b.fromMs);
  const activities: Activity[] = [];
  let atMs = 0;
  const wait = (untilMs: number) => {
    if (untilMs - atMs > roundMs * 1e-9) {
      activities.push({ name: '', state: 'waiting', fromMs: atMs, toMs: untilMs });
    }
  };
  for (const activity of inOrder) {
    wait(activity.fromMs);
    activities.push(activity);
    atMs = activity.toMs;
  }
  wait(roundMs);
  const workingMs = inOrder.reduce((sum, { fromMs, toMs }) => sum + toMs - fromMs, 0);
  return { who, number, activities, workingMs, waitingMs: Math.max(0, roundMs - workingMs) };
}
