import { type LineBalance, lineBalance } from '../../statistics/line-balance';
import { quantile } from '../../statistics/quantile';
import { assignStations, type StationTask } from './assign-stations';
import type { CellElement, CellWork } from './cell-work';

/** What one person does, in the order it is done. */
export interface BalancedStation {
  readonly elements: readonly CellElement[];
  readonly totalMs: number;
  /** Eight cycles in ten are through by then. */
  readonly p80Ms: number;
}

export type WorkBalance =
  | {
      readonly ok: true;
      readonly stations: readonly BalancedStation[];
      readonly balance: LineBalance;
      /** Elements that alone take longer than the takt. */
      readonly tooLong: readonly string[];
    }
  | { readonly ok: false; readonly loop: readonly string[] };

/**
 * Hand work given to as few persons as the takt allows, under what must come after what: by both rules of
 * assignStations, whichever needs fewer, or then has the shorter longest station. Null without hand work that
 * takes time.
 *
 * @param after names of the elements that must be done before each, by name
 */
export function balanceWork(
  { elements }: CellWork,
  taktMs: number,
  after: Readonly<Record<string, readonly string[]>>,
): WorkBalance | null {
  const hands = elements.filter(({ place }) => place !== 'machine');
  if (!hands.some(({ meanMs }) => meanMs > 0)) return null;
  const tasks = hands.map(
    ({ name, meanMs }): StationTask => ({ name, time: meanMs, after: after[name] ?? [] }),
  );
  const plans = (['most-followers', 'heaviest-weight'] as const).map((rule) =>
    assignStations(tasks, taktMs, rule),
  );
  const [first] = plans;
  if (!first!.ok) return first!;
  const byName = new Map(hands.map((own) => [own.name, own]));
  const found = plans
    .flatMap((plan) => (plan.ok ? [plan.stations] : []))
    .map((stations) => stations.map((own) => stationOf(own.map(({ name }) => byName.get(name)!))));
  const longest = (stations: readonly BalancedStation[]) =>
    Math.max(...stations.map(({ totalMs }) => totalMs));
  const [best] = found.sort((a, b) => a.length - b.length || longest(a) - longest(b));
  const balance = lineBalance(
    best!.map(({ totalMs }) => totalMs),
    taktMs,
  );
  return { ok: true, stations: best!, balance, tooLong: first!.tooLong };
}

function stationOf(elements: readonly CellElement[]): BalancedStation {
  const cycles = elements[0]!.timesMs.map((_, i) =>
    elements.reduce((sum, { timesMs }) => sum + timesMs[i]!, 0),
  );
  return {
    elements,
    totalMs: elements.reduce((sum, { meanMs }) => sum + meanMs, 0),
    p80Ms: quantile(cycles, 0.8),
  };
}
