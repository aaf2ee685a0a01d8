import type { Moment } from './demo-log';
import { type DemoCode, demoParts } from './demo-parts';
import type { LotWriter } from './lot-writer';
import { ShiftClock } from './shift-clock';
import { mixOf, personAt } from './shift-plan';
import { type DemoOutcome, isReworked, type ShopChance } from './shop-chance';
import { type DemoStop, stopReasons } from './stop-reasons';
import type { TurnWriter } from './turn-writer';
import { cleaningUp, doorsPerOccurrence, handWork, inspecting } from './work-content';

const CHANCE_OF_DEFECT = 0.025;

/** A door that has been bored: the next one's operator inspects it. */
interface BoredDoor {
  readonly code: DemoCode;
  readonly outcome: DemoOutcome;
}

/**
 * A day by the new method, one piece at a time: while the machine bores a door, the operator inspects
 * the one before and cleans up the next.
 *
 * The tap is the press of cycle-start: it closes the door that was in the machine until then. Nobody
 * else presses for the last door of a turn, so it is closed when its cycle ends, and the next turn
 * begins with the loading of its first.
 */
export function writeFlowDay(day: number, chance: ShopChance, writer: TurnWriter, lots: LotWriter): void {
  new FlowDay(day, chance, writer, lots).run();
}

class FlowDay {
  private readonly clock: ShiftClock;
  private readonly queue: { code: DemoCode; changes: boolean }[] = [];
  private readonly since = { changeBlade: 0, exchangeTrolley: 0, emptyChipTray: 0 };
  private lotCode: DemoCode | null = null;
  private leftInLot = 0;
  private bored: BoredDoor | null = null;
  /** The tap that closes the bored door is still to come. */
  private boredIsOpen = false;

  constructor(
    day: number,
    private readonly chance: ShopChance,
    private readonly writer: TurnWriter,
    private readonly lots: LotWriter,
  ) {
    this.clock = new ShiftClock(day, {
      pauseUntil: (minute) => writer.pauseUntil(minute),
      handOver: (minute) => {
        this.closeLast();
        writer.end();
        writer.start(day, minute, personAt(day, minute), this.queue[0]!.code);
      },
    });
  }

  run(): void {
    this.queue.push(this.nextDoor(), this.nextDoor());
    const { code } = this.queue[0]!;
    const person = personAt(this.clock.day, this.clock.minute);
    // Nothing is in the machine yet: the first door is made ready before the first cycle begins.
    this.clock.minute += this.hand(handWork.get) + this.hand(cleaningUp(demoParts[code]));
    this.writer.startMorning(this.clock.day, person, code, this.clock.minute);
    while (this.clock.reachWork()) this.cycle();
    this.closeLast();
    this.lots.placed();
    this.lots.trolleyLeft(this.writer.now);
    this.writer.endDay();
  }

  private cycle(): void {
    const [door, next] = [this.queue[0]!, this.queue[1]!];
    const part = demoParts[door.code];
    if (door.changes && this.bored) this.setUp(this.hand(handWork.setUp));

    let external = this.bored ? this.hand(handWork.unload) : 0;
    external += this.hand(handWork.load);
    external += this.hand(handWork.walk);
    external += this.occasionally('emptyChipTray');
    const machine = this.chance.machineMinutes(part);
    let exchanged = 0;
    let internal = this.hand(handWork.walk);
    if (this.bored) {
      internal += this.hand(inspecting(demoParts[this.bored.code]));
      if (isReworked(this.bored.outcome)) internal += this.hand(handWork.rework);
      internal += this.hand(handWork.place);
      exchanged = this.occasionally('exchangeTrolley');
      internal += exchanged;
      this.lots.placed();
    }
    const placedAfter = internal;
    internal += this.hand(handWork.get);
    internal += this.hand(cleaningUp(demoParts[next.code]));
    internal += this.occasionally('changeBlade');

    const base = Math.max(machine, internal);
    const stops = this.chance.stops(external + base);
    const held = (byMachine: boolean) =>
      stops.reduce((sum, stop) => sum + (stop.holdsMachine === byMachine ? stop.minutes : 0), 0);
    const { day } = this.clock;
    const body = Math.max(machine + held(true), internal + held(false));
    this.clock.minute += external + body;

    this.writer.work(external);
    if (this.boredIsOpen) this.writer.done();
    this.writer.change(door.code);
    if (exchanged > 0) this.lots.trolleyLeft(later(this.writer.now, placedAfter));
    this.writer.work(
      base,
      withAbsorbed(stops, body - base, machine + held(true) === body),
      this.boredIsOpen ? this.bored?.outcome : 'good',
    );

    this.lots.cycleEnded(this.writer.now);
    this.bored = { code: door.code, outcome: this.chance.outcome(CHANCE_OF_DEFECT) };
    this.boredIsOpen = true;
    this.chance.learn(personAt(day, this.clock.minute));
    this.queue.shift();
    this.queue.push(this.nextDoor());
  }

  /** No cycle-start follows in this turn: the door is closed, and judged, where its cycle ended. */
  private closeLast(): void {
    this.writer.done();
    this.writer.judge(this.bored!.outcome);
    this.boredIsOpen = false;
  }

  private setUp(minutes: number): void {
    this.clock.minute += minutes;
    this.writer.stop(minutes, stopReasons.setUp);
  }

  private occasionally(what: keyof typeof doorsPerOccurrence): number {
    this.since[what] += 1;
    if (this.since[what] < doorsPerOccurrence[what]) return 0;
    this.since[what] = 0;
    return this.hand(handWork[what]);
  }

  private hand(work: { mean: number; cv: number }): number {
    return this.chance.handMinutes(work, this.clock);
  }

  /** The order book: lots of one code, one after the other. */
  private nextDoor(): { code: DemoCode; changes: boolean } {
    this.leftInLot -= 1;
    if (this.leftInLot >= 0) return { code: this.lotCode!, changes: false };
    const code = this.chance.code(mixOf(this.clock.day));
    const changes = code !== this.lotCode;
    this.leftInLot = this.chance.lotSize() - 1;
    this.lotCode = code;
    return { code, changes };
  }
}

/**
 * Stoppages with the part of each that cost nothing: what holds the one that did not govern the cycle is absorbed
 * whole, and of what held the one that did, all but what the cycle grew by.
 */
function withAbsorbed(stops: readonly DemoStop[], cost: number, machineGoverned: boolean): DemoStop[] {
  const governing = stops.filter(({ holdsMachine }) => holdsMachine === machineGoverned);
  const held = governing.reduce((sum, { minutes }) => sum + minutes, 0);
  const share = held > 0 ? Math.max(0, 1 - cost / held) : 0;
  return stops.map((stop) => ({
    ...stop,
    absorbed: stop.minutes * (stop.holdsMachine === machineGoverned ? share : 1),
  }));
}

const later = ({ day, minute }: Moment, minutes: number): Moment => ({ day, minute: minute + minutes });
