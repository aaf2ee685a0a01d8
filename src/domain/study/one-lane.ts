import type { ElementDefinition } from '../shop/element-definition';
import { startsWith } from './starts-with';
import { cycleOrder } from './study';
import type { WatchInHand } from './watch-in-hand';

type Elements = readonly ElementDefinition[];

/**
 * A study of one lane: the machine elements whose run holds internal work that is tapped before their own end, by the
 * element with whose end they begin. What was left of such a run when its turn came is not the run.
 */
export function runsOverWork(elements: Elements): ReadonlyMap<number, readonly number[]> {
  const after = new Map<number, number[]>();
  for (const { machine, starter, between } of runsOf(elements)) {
    if (!between.some((index) => isInternal(elements[index]!))) continue;
    after.set(starter, [machine]);
    if (machine < starter) after.set(-1, [machine]);
  }
  return after;
}

/**
 * Internal elements that one lane can tap only once the machine has stopped, as places in the list; none without a
 * machine.
 */
export function internalAfterStop(elements: Elements): number[] {
  const runs = runsOf(elements);
  if (runs.length === 0) return [];
  const seen = new Set(runs.flatMap(({ between }) => between));
  return cycleOrder(elements).filter((index) => isInternal(elements[index]!) && !seen.has(index));
}

const isInternal = ({ work, placement }: Elements[number]) => work !== 'machine' && placement === 'internal';

function runsOf(elements: Elements): { machine: number; starter: number; between: number[] }[] {
  const order = cycleOrder(elements);
  const inCycle = order.map((index) => elements[index]!);
  return order.flatMap((machine, place) => {
    if (inCycle[place]!.work !== 'machine') return [];
    const byHand = startsWith(inCycle, place);
    if (byHand < 0) return [];
    const length = (place - byHand + order.length) % order.length;
    const since = Array.from({ length: length - 1 }, (_, step) => order[(byHand + 1 + step) % order.length]!);
    // Of two machines in a row the second begins as the first one ends.
    const last = since.findLastIndex((index) => elements[index]!.work === 'machine');
    return [{ machine, starter: last < 0 ? order[byHand]! : since[last]!, between: since.slice(last + 1) }];
  });
}

/** The machine starts; when it stops its own tap says. A run before it that nobody ended has no reading. */
export function beginRun({ watch, everyFlag }: WatchInHand, indexes: readonly number[], atMs: number): void {
  const [elementIndex] = indexes;
  if (elementIndex === undefined) return;
  watch.machine = { elementIndex, cycle: watch.cycle, beganAtMs: atMs, clockFlag: everyFlag };
}

/**
 * The run that ends with the element in hand, and whether its beginning was not seen. Null for every other element:
 * its time is its own.
 */
export function endRun({ heading, after, watch }: WatchInHand): {
  readonly run: NonNullable<WatchInHand['watch']['machine']> | null;
  readonly isStartUnseen: boolean;
} {
  const isRun = heading.lanes === 1 && [...after.values()].some(([index]) => index === watch.elementIndex);
  if (!isRun) return { run: null, isStartUnseen: false };
  const run = watch.machine?.elementIndex === watch.elementIndex ? watch.machine : null;
  watch.machine = null;
  return { run, isStartUnseen: run === null };
}
