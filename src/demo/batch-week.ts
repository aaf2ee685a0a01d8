import { type DemoCode, demoParts } from './demo-parts';
import type { LotWriter } from './lot-writer';
import { ShiftClock } from './shift-clock';
import { BATCH_DAYS, normalMix, personAt } from './shift-plan';
import { type DemoOutcome, isReworked, type ShopChance } from './shop-chance';
import { stopReasons } from './stop-reasons';
import type { TurnWriter } from './turn-writer';
import { cleaningUp, doorsPerOccurrence, handWork, inspecting } from './work-content';

const RACK = 20;

/**
 * The first week, by the old method: a rack of doors of one code is cleaned up whole, moved, bored
 * whole with the operator standing by, moved, and inspected whole. A door is done when it has been
 * inspected; its own time is the sum of what it took in the three passes. Work in hand at the end of a
 * turn is left to the next one, and what is in hand on Friday evening is not finished.
 */
export function writeBatchWeek(chance: ShopChance, writer: TurnWriter, lots: LotWriter): void {
  new BatchWeek(chance, writer, lots).run();
}

class BatchWeek {
  private clock = this.newDay(0);
  private code: DemoCode | null = null;
  private doorsOnBlade = 0;
  private doorsOnTray = 0;
  private touch: number[] = [];

  constructor(
    private readonly chance: ShopChance,
    private readonly writer: TurnWriter,
    private readonly lots: LotWriter,
  ) {}

  run(): void {
    while (this.reachWork() && this.workRack());
    // The rack in hand on Friday evening is finished elsewhere.
    this.lots.released(this.writer.now);
  }

  /** False: the week ended inside the rack. */
  private workRack(): boolean {
    const code = this.chance.code(normalMix);
    const part = demoParts[code];
    const driftFrom = this.chance.driftFrom();
    if (this.code === null) this.startMorning(code);
    this.lots.arrived(this.writer.now);
    if (this.code !== null && this.code !== code) this.setUp(code);
    this.code = code;
    this.touch = Array.from({ length: RACK }, () => 0);

    const cleaned = this.pass(() => {
      let minutes = this.hand(handWork.get) + this.hand(cleaningUp(part)) + this.hand(handWork.stack);
      this.doorsOnBlade += 1;
      if (this.doorsOnBlade === doorsPerOccurrence.changeBlade) {
        minutes += this.hand(handWork.changeBlade);
        this.doorsOnBlade = 0;
      }
      return { minutes };
    });
    if (!cleaned) return false;
    this.moveRack();

    const bored = this.pass(() => {
      let minutes = this.hand(handWork.load);
      minutes += this.chance.machineMinutes(part) + this.hand(handWork.unloadAndStack);
      this.doorsOnTray += 1;
      if (this.doorsOnTray === doorsPerOccurrence.emptyChipTray) {
        minutes += this.hand(handWork.emptyChipTray);
        this.doorsOnTray = 0;
      }
      return { minutes };
    });
    if (!bored) return false;
    this.moveRack();

    const inspected = this.pass((place) => {
      let minutes = this.hand(handWork.getBored) + this.hand(inspecting(part)) + this.hand(handWork.place);
      const outcome = this.chance.outcome(place >= driftFrom ? 0.35 : 0.035);
      if (isReworked(outcome)) minutes += this.hand(handWork.rework);
      return { minutes, outcome };
    });
    if (inspected) this.lots.released(this.writer.now);
    return inspected;
  }

  /** One operation on every door of the rack; where it judges the door, the door is done. */
  private pass(operation: (place: number) => { minutes: number; outcome?: DemoOutcome }): boolean {
    for (let place = 0; place < RACK; place += 1) {
      if (!this.reachWork()) return false;
      const { minutes, outcome } = operation(place);
      const stops = this.chance.stops(minutes);
      this.clock.minute += minutes + stops.reduce((sum, stop) => sum + stop.minutes, 0);
      this.touch[place]! += minutes;
      this.writer.work(minutes, stops);
      if (outcome === undefined) continue;
      this.writer.done(this.touch[place]!);
      this.writer.judge(outcome);
    }
    return true;
  }

  private setUp(code: DemoCode): void {
    const minutes = this.hand(handWork.setUp);
    this.clock.minute += minutes;
    this.writer.stop(minutes, stopReasons.setUp);
    this.writer.change(code);
  }

  private moveRack(): void {
    const minutes = this.hand(handWork.moveRack);
    this.clock.minute += minutes;
    this.writer.work(minutes);
  }

  private hand(work: { mean: number; cv: number }): number {
    return this.chance.handMinutes(work, this.clock);
  }

  /** Over breaks, lunch and nights; false when the week is over. */
  private reachWork(): boolean {
    if (this.clock.reachWork()) return true;
    this.writer.endDay();
    if (this.clock.day + 1 === BATCH_DAYS) return false;
    this.clock = this.newDay(this.clock.day + 1);
    this.startMorning(this.code!);
    return true;
  }

  private startMorning(code: DemoCode): void {
    const { day, minute } = this.clock;
    this.writer.startMorning(day, personAt(day, minute), code, minute);
  }

  private newDay(day: number): ShiftClock {
    return new ShiftClock(day, {
      pauseUntil: (minute) => this.writer.pauseUntil(minute),
      handOver: (minute) => {
        this.writer.end();
        this.writer.start(day, minute, personAt(day, minute), this.code!);
      },
    });
  }
}
