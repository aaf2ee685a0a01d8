import { seededRandom } from '../statistics/seeded-random';
import { type DemoCode, type DemoPart, demoCodes } from './demo-parts';
import { lognormalTime, type SpreadTime } from './lognormal-time';
import { normalDeviates } from './normal-deviates';
import { BATCH_DAYS, DAYS, type DemoPerson, type Mix, personAt } from './shift-plan';
import { type DemoStop, stopCauses } from './stop-reasons';
import { boringCv, boringMinutes } from './work-content';

/** How a door came out: good, or the defect that was found. */
export type DemoOutcome = 'good' | 'edge chip' | 'band scratch' | 'cup out of position' | 'cup depth';

/** A cup in the wrong place cannot be put right; the other defects are, at once. */
export const isReworked = (outcome: DemoOutcome) => outcome !== 'good' && outcome !== 'cup out of position';

/** Work per minute of normal time. */
const truePace: Readonly<Record<DemoPerson, number>> = { K7: 1, M2: 0.92, R4: 1.06 };
/** An element that went slowly is followed by one that is a little slow. */
const LAG = 0.25;

/**
 * Everything that chance decides in the invented shop. Each kind of chance has a stream of its own, so
 * that a change to one does not move the others.
 *
 * Must be asked in the same order every time: the figures of the demo depend on it.
 */
export class ShopChance {
  private readonly order = seededRandom(20260302);
  private readonly defect = seededRandom(305419896);
  private readonly stop = seededRandom(998244353);
  private readonly hand = normalDeviates(seededRandom(1471208959));
  private readonly machine = normalDeviates(seededRandom(611953007));
  private readonly stopLength = normalDeviates(this.stop);
  private readonly dayFactors: readonly number[];
  private readonly learnt: Record<DemoPerson, number> = { K7: 0, M2: 0, R4: 0 };
  private lastDeviate = 0;

  constructor() {
    const deviate = normalDeviates(seededRandom(718281828));
    this.dayFactors = Array.from({ length: DAYS }, () => Math.exp(0.02 * deviate()));
  }

  code(mix: Mix): DemoCode {
    let left = this.order();
    for (const code of demoCodes) {
      left -= mix[code];
      if (left < 0) return code;
    }
    return 'S';
  }

  /** Doors of one code in a row, one-piece flow. */
  lotSize(): number {
    return 12 + Math.floor(this.order() * 19);
  }

  /** The place in a rack of 20 from which the cups drift; 99 when they do not. */
  driftFrom(): number {
    return this.defect() < 0.08 ? Math.floor(this.defect() * 20) : 99;
  }

  /** Minutes of hand work by whoever is at the station. */
  handMinutes(work: SpreadTime, { day, minute }: { day: number; minute: number }): number {
    const person = personAt(day, minute);
    const learning = day < BATCH_DAYS ? 1 : 1 + 0.12 * Math.exp(-this.learnt[person] / 150);
    this.lastDeviate = LAG * this.lastDeviate + this.hand() * Math.sqrt(1 - LAG * LAG);
    return (lognormalTime(this.lastDeviate, work) * learning) / (truePace[person] * this.dayFactors[day]!);
  }

  /** One more door by the new method. */
  learn(person: DemoPerson): void {
    this.learnt[person] += 1;
  }

  machineMinutes(part: DemoPart): number {
    return boringMinutes(part) * (1 + boringCv * this.machine());
  }

  /** What stops the cell during so many minutes of work. */
  stops(minutes: number): DemoStop[] {
    return stopCauses.flatMap((cause) =>
      this.stop() < 1 - Math.exp(-minutes / cause.every)
        ? [{ ...cause, minutes: lognormalTime(this.stopLength(), cause) }]
        : [],
    );
  }

  outcome(chanceOfDefect: number): DemoOutcome {
    if (this.defect() >= chanceOfDefect) return 'good';
    const kind = this.defect();
    if (kind < 0.35) return 'edge chip';
    if (kind < 0.6) return 'band scratch';
    return kind < 0.85 ? 'cup out of position' : 'cup depth';
  }
}
