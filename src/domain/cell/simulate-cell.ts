import { branchesOf } from './branches';
import type { CellPlan } from './cell-plan';
import type { CellWork } from './cell-work';
import { GrowingList } from './growing-list';
import { randomStreams } from './random-streams';
import { resampledCycles } from './resampled-cycles';

/** What a simulated stretch of days gave. Times in working milliseconds. */
export interface CellRun {
  readonly days: number;
  /** Good parts put down on each whole day. */
  readonly goodByDay: readonly number[];
  /** Of every part that was released, from its arrival to its release, in order. */
  readonly leadTimesMs: Float64Array;
  /** How many of these were released on each whole day. */
  readonly releasedByDay: readonly number[];
  readonly parts: number;
  readonly scrapped: number;
  /** Mean time between two parts, everything in. */
  readonly intervalMs: number;
  /** Mean time from the start of a part's own cycle until it is put down. */
  readonly flowMs: number;
  /** Mean time that a part waits for its trolley to fill. */
  readonly trolleyMs: number;
  /** Parts inside, averaged over time from arrivals and releases; and by Little's law, rate × mean lead time. */
  readonly meanInside: number;
  readonly insideByLittle: number;
  /** Shares of the time. */
  readonly machineRuns: number;
  readonly operatorWaits: number;
}

/**
 * Simulation of the cell by discrete events, on the shop's own timed cycles drawn by seed. The same seed gives the
 * same days. It is carried on day by day, so that a long one can show how far it is, and be stopped.
 *
 * One operator serves the machines in turn: works at the standing machine (external), which then runs while the
 * operator does the internal work. A part is put down in the internal work of the cycle that follows its own;
 * without a machine, of its own. Then another person takes it, where there is one: the operator waits while the
 * places before that person are full. Full trolleys leave.
 *
 * Parts cannot overtake, so that each event follows from the events before it without a queue.
 *
 * @throws {RangeError} CellSimulation requires work that takes time
 */
export class CellSimulation {
  private readonly branches;
  /** Internal work that comes after a part was put down, by cycle. */
  private readonly afterwards: Float64Array;
  private readonly nextCycle: () => number;
  private readonly chance;
  private readonly occasionals;
  private readonly stops;
  private readonly machineReady: Float64Array;
  /** When the other person is through with each of the last parts. */
  private readonly otherLeft: Float64Array;
  private readonly isEverBad: boolean;
  private readonly hasMachine: boolean;
  private readonly hasOther: boolean;
  /** Start and arrival of parts that are in a machine, by machine. */
  private readonly started: Float64Array;
  private readonly arrivalOf: Float64Array;
  private readonly isScrapOf: Uint8Array;
  private readonly leadTimes = new GrowingList();
  private readonly good: number[] = [];
  private readonly released: number[] = [];
  private operatorFree = 0;
  private part = 0;
  private passed = 0;
  private lotArrived = 0;
  private nextLotArrived = 0;
  private arrivedParts = 0;
  private arrivedSum = 0;
  private releasedSum = 0;
  /** Arrivals of the parts on the trolley, and how many those are. */
  private readonly onTrolley: Float64Array;
  private loaded = 0;
  private loadedSum = 0;
  private trolleySum = 0;
  private lastReleaseMs = 0;
  private lastDoneMs = 0;
  private flowSum = 0;
  private scrapped = 0;
  private machineSum = 0;
  private waitSum = 0;
  /** Working time that stoppages are counted on. */
  private worked = 0;

  constructor(
    private readonly plan: CellPlan,
    seed: number,
  ) {
    const { work, machines, buffer, stops } = plan;
    this.branches = branchesOf(work);
    if (!Object.values(this.branches).some((times) => times.some((time) => time > 0))) {
      throw new RangeError('CellSimulation requires work that takes time');
    }
    this.afterwards = afterPutDown(work, plan.putDownWith);
    const { external, internal, machine, other } = this.branches;
    this.hasMachine = machine.some((time) => time > 0);
    this.hasOther = other.some((time) => time > 0);
    const [cycles, judged, ...more] = randomStreams(seed, 2 + work.occasionals.length + 2 * stops.length);
    const totals = Array.from(external, (time, i) => time + internal[i]!);
    this.nextCycle = resampledCycles(totals, cycles!);
    this.chance = judged!;
    this.occasionals = work.occasionals.map((own) => ({ ...own, since: 0, random: more.shift()! }));
    this.stops = stops.map((cause) => {
      const [when, length] = [more.shift()!, more.shift()!];
      return { ...cause, when, length, at: -Math.log(when()) * cause.everyMs };
    });
    this.isEverBad = plan.scrapShare + plan.reworkShare > 0;
    this.onTrolley = new Float64Array(plan.trolley);
    this.machineReady = new Float64Array(machines);
    this.started = new Float64Array(machines);
    this.arrivalOf = new Float64Array(machines);
    this.isScrapOf = new Uint8Array(machines);
    this.otherLeft = new Float64Array(this.hasOther ? buffer + 1 : 1);
  }

  /** Whole days simulated so far. */
  get days(): number {
    return Math.floor(this.operatorFree / this.plan.dayMs);
  }

  /** Goes on until so many days are over. */
  runUntilDay(day: number): void {
    const untilMs = day * this.plan.dayMs;
    while (this.lastDoneMs < untilMs) this.cycle();
  }

  /** Goes on until so many parts were begun. */
  runParts(parts: number): void {
    while (this.part < parts) this.cycle();
  }

  private cycle(): void {
    const { plan, branches } = this;
    const n = this.part;
    const slot = n % plan.machines;
    const row = this.nextCycle();
    let external = branches.external[row]!;
    let internal = branches.internal[row]!;
    let machine = branches.machine[row]!;
    for (const own of this.occasionals) {
      own.since += 1;
      // More than once a part, where a table says so.
      for (; own.since >= own.everyParts; own.since -= own.everyParts) {
        const time = own.timesMs[Math.floor(own.random() * own.timesMs.length)]!;
        if (own.place === 'external') external += time;
        else internal += time;
      }
    }
    const luck = this.isEverBad ? this.chance() : 1;
    const isScrap = luck < plan.scrapShare;
    if (!isScrap && luck < plan.scrapShare + plan.reworkShare) internal += plan.reworkMs;
    const worked = external + Math.max(internal, machine / plan.machines);
    this.worked += worked;
    this.machineSum += machine;
    for (const stop of this.stops) {
      while (stop.at <= this.worked) {
        const length = stop.lengthsMs[Math.floor(stop.length() * stop.lengthsMs.length)]!;
        if (stop.holdsMachine && this.hasMachine) machine += length;
        else internal += length;
        stop.at -= Math.log(stop.when()) * stop.everyMs;
      }
    }

    const start = Math.max(this.operatorFree, this.machineReady[slot]!);
    this.waitSum += start - this.operatorFree;
    this.takeFromLot(n, start);
    this.machineReady[slot] = start + external + machine;
    this.operatorFree = start + external + internal;
    if (!this.hasMachine) {
      this.passOn(row, start, this.lotArrived, isScrap);
    } else {
      if (n >= plan.machines) {
        this.passOn(row, this.started[slot]!, this.arrivalOf[slot]!, this.isScrapOf[slot] === 1);
      }
      this.started[slot] = start;
      this.arrivalOf[slot] = this.lotArrived;
      this.isScrapOf[slot] = isScrap ? 1 : 0;
    }
    this.part += 1;
  }

  /** The lot that a part is taken from: the next one is there before its first part is wanted. */
  private takeFromLot(n: number, startMs: number): void {
    const { arrivalLot, refillAt } = this.plan;
    if (n === 0) this.lotArrives(0);
    // The cycle before this one ended now, and so many parts are left.
    if (n > 0 && (n - 1) % arrivalLot === Math.max(0, arrivalLot - 1 - refillAt)) this.lotArrives(startMs);
    if (n % arrivalLot === 0) this.lotArrived = this.nextLotArrived;
  }

  private lotArrives(atMs: number): void {
    this.nextLotArrived = atMs;
    this.arrivedParts += this.plan.arrivalLot;
    this.arrivedSum += this.plan.arrivalLot * atMs;
  }

  /** The part leaves the operator's hands: to the other person, or onto the trolley. */
  private passOn(row: number, beganMs: number, arrivedMs: number, isScrap: boolean): void {
    const afterwards = this.afterwards[row]!;
    let doneMs = this.operatorFree - afterwards;
    if (this.hasOther) {
      const places = this.otherLeft.length;
      const mine = this.passed % places;
      // The place this part would take was that of the part so many before it.
      const handedOverMs = Math.max(doneMs, this.otherLeft[mine]!);
      this.operatorFree = handedOverMs + afterwards;
      const before = this.otherLeft[(this.passed + places - 1) % places]!;
      doneMs = Math.max(handedOverMs, before) + this.branches.other[row]!;
      this.otherLeft[mine] = doneMs;
    }
    this.passed += 1;
    this.lastDoneMs = doneMs;
    this.flowSum += doneMs - beganMs;
    const day = Math.floor(doneMs / this.plan.dayMs);
    for (; this.good.length <= day; this.released.push(0)) this.good.push(0);
    if (isScrap) this.scrapped += 1;
    else this.good[day]! += 1;
    this.onTrolley[this.loaded] = arrivedMs;
    this.loaded += 1;
    this.loadedSum += doneMs;
    if (this.loaded < this.plan.trolley) return;
    for (let i = 0; i < this.loaded; i += 1) this.leadTimes.push(doneMs - this.onTrolley[i]!);
    this.released[day]! += this.loaded;
    this.releasedSum += doneMs * this.loaded;
    this.trolleySum += doneMs * this.loaded - this.loadedSum;
    this.loaded = 0;
    this.loadedSum = 0;
    this.lastReleaseMs = doneMs;
  }

  /** What the days so far gave; the last one is left out while it is not over. */
  result(): CellRun {
    const leadTimesMs = this.leadTimes.values();
    const released = leadTimesMs.length;
    const untilMs = this.lastReleaseMs;
    const days = Math.floor(this.lastDoneMs / this.plan.dayMs);
    const meanLeadMs = leadTimesMs.reduce((sum, time) => sum + time, 0) / Math.max(1, released);
    const insideMs = untilMs * (this.arrivedParts - released) - this.arrivedSum + this.releasedSum;
    return {
      days,
      goodByDay: this.good.slice(0, days),
      leadTimesMs,
      releasedByDay: this.released.slice(0, days),
      parts: this.passed,
      scrapped: this.scrapped,
      intervalMs: this.lastDoneMs / Math.max(1, this.passed),
      flowMs: this.flowSum / Math.max(1, this.passed),
      trolleyMs: this.trolleySum / Math.max(1, released),
      meanInside: untilMs > 0 ? insideMs / untilMs : 0,
      insideByLittle: untilMs > 0 ? (released / untilMs) * meanLeadMs : 0,
      machineRuns: this.machineSum / this.plan.machines / Math.max(1, this.operatorFree),
      operatorWaits: this.waitSum / Math.max(1, this.operatorFree),
    };
  }
}

function afterPutDown({ elements }: CellWork, putDownWith: string): Float64Array {
  const internal = elements.filter(({ place }) => place === 'internal');
  const last = internal.findIndex(({ name }) => name === putDownWith);
  const times = new Float64Array(elements[0]?.timesMs.length ?? 0);
  if (last < 0) return times;
  for (const { timesMs } of internal.slice(last + 1)) {
    for (let i = 0; i < times.length; i += 1) times[i]! += timesMs[i]!;
  }
  return times;
}
