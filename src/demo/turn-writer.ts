import type { StopReason } from '../domain/records/shop-fact';
import type { PartInHand, TurnFact } from '../domain/records/turn-fact';
import type { DemoLog, Moment } from './demo-log';
import { type DemoCode, demoParts } from './demo-parts';
import { type DemoPerson, SHIFT_END } from './shift-plan';
import { type DemoOutcome, isReworked } from './shop-chance';
import { type DemoStop, stopReasons } from './stop-reasons';

/** Share of a cycle after which the door before it has been inspected. */
const JUDGED_AFTER = 0.2;

/**
 * Writes the taps of a turn, and keeps the clock they are read from.
 *
 * Work and stoppages follow one another here: each takes its full time. Where the shop lost less than
 * its stoppages lasted, because the machine bored on meanwhile or two of them coincided, the clock of the
 * taps runs late by that much until the next break, which then begins later and ends on time. So neither
 * the cycles nor the stoppages are falsified.
 */
export class TurnWriter {
  private day = 0;
  private minute = 0;
  private stream = '';
  private code: DemoCode = 'M';
  private lastDone = '';

  constructor(
    private readonly log: DemoLog,
    /** The shop's parts, by code, as records name them. */
    private readonly partIds: ReadonlyMap<DemoCode, string>,
  ) {}

  /** What the clock of the taps shows. */
  get now(): Moment {
    return { day: this.day, minute: this.minute };
  }

  /** A day begins with the meeting; work begins when the first door is loaded. */
  startMorning(day: number, person: DemoPerson, code: DemoCode, workFrom: number): void {
    this.start(day, 0, person, code);
    this.pauseUntil(workFrom);
  }

  start(day: number, minute: number, person: DemoPerson, code: DemoCode): void {
    this.day = day;
    this.minute = minute;
    this.code = code;
    this.stream = this.log.append(null, this.now, {
      kind: 'turn-started',
      starts: 'turn',
      person,
      ...this.inHand(),
    });
  }

  /** Work with the stoppages that fell into it; `judged` is how the door before came out. */
  work(minutes: number, stops: readonly DemoStop[] = [], judged: DemoOutcome = 'good'): void {
    const before = this.minute;
    this.minute += minutes * JUDGED_AFTER;
    this.judge(judged);
    let worked = this.minute - before;
    for (const [place, { reason, minutes: length, absorbed = 0 }] of stops.entries()) {
      const until = (minutes * (place + 1)) / (stops.length + 1);
      this.minute += until - worked;
      worked = until;
      const stoppage = this.stop(length, reason);
      const absorbedMs = Math.round(absorbed * 60_000);
      if (absorbedMs > 0) this.tap({ kind: 'stoppage-absorbed', stoppage, absorbedMs });
    }
    this.minute += minutes - worked;
  }

  stop(minutes: number, reason: StopReason | null): string {
    const stoppage = this.tap({ kind: 'stopped' });
    this.minute += minutes;
    this.tap({ kind: 'resumed' });
    if (reason) this.explain(stoppage, reason);
    return stoppage;
  }

  /** A planned break, which ends when it is planned to end. */
  pauseUntil(minute: number): void {
    this.stop(minute - this.minute, stopReasons.planned);
  }

  /** `touchMinutes`: time on this door, where it was not worked from tap to tap. */
  done(touchMinutes?: number): void {
    const timed = touchMinutes === undefined ? {} : { touchMs: Math.round(touchMinutes * 60_000) };
    this.lastDone = this.tap({ kind: 'part-done', ...this.inHand(), ...timed });
  }

  judge(outcome: DemoOutcome): void {
    if (outcome === 'good') return;
    this.tap({
      kind: 'part-judged',
      partDone: this.lastDone,
      outcome: isReworked(outcome) ? 'rework' : 'scrap',
      defect: outcome,
    });
  }

  change(code: DemoCode): void {
    if (code === this.code) return;
    this.code = code;
    this.tap({ kind: 'part-changed', ...this.inHand() });
  }

  end(): void {
    this.tap({ kind: 'turn-ended' });
  }

  /** Sweeping up until 15:00, then home. A day that ran over has none of it. */
  endDay(): void {
    if (this.minute < SHIFT_END) {
      const closeDown = this.tap({ kind: 'stopped' });
      this.explain(closeDown, stopReasons.planned);
      this.minute = SHIFT_END;
    }
    this.end();
  }

  private explain(stoppage: string, { id, label, category }: StopReason): void {
    this.tap({ kind: 'stoppage-explained', stoppage, reason: id, label, category });
  }

  private tap(fact: TurnFact): string {
    return this.log.append(this.stream, this.now, fact);
  }

  private inHand(): PartInHand {
    const { code, targetMs } = demoParts[this.code];
    return { part: this.partIds.get(code)!, partCode: code, targetMs };
  }
}
