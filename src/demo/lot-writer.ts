import { foldLots } from '../domain/cell/fold-lots';
import type { LotFact } from '../domain/records/lot-fact';
import type { DemoLog, Moment } from './demo-log';

/** Doors of a stack, and how many are left of it when the next one is brought. */
export const STACK = 20;
export const REFILL_AT = 3;

/** Writes what comes to the cell and what leaves it, beside the taps of the turns: a stream for every day. */
export class LotWriter {
  private day = -1;
  private stream = '';
  private begun = 0;
  private onTrolley = 0;

  constructor(private readonly log: DemoLog) {}

  arrived(at: Moment, parts = STACK): void {
    this.write(at, { kind: 'lot-arrived', parts, lot: '' });
  }

  released(at: Moment, parts = STACK): void {
    if (parts > 0) this.write(at, { kind: 'lot-released', parts, lot: '' });
  }

  /** A door of a stack went into the machine; its cycle has ended now. */
  cycleEnded(at: Moment): void {
    this.begun += 1;
    if (this.begun % STACK === STACK - REFILL_AT) this.arrived(at);
  }

  placed(): void {
    this.onTrolley += 1;
  }

  /** The trolley goes, full or not. */
  trolleyLeft(at: Moment): void {
    this.released(at, this.onTrolley);
    this.onTrolley = 0;
  }

  /** Written when the records reach that moment: taps of the turn come before and after it. */
  private write(at: Moment, fact: LotFact): void {
    this.log.at(at, () => {
      if (this.day !== at.day) this.openDay(at);
      this.log.append(this.stream, at, fact);
    });
  }

  private openDay(at: Moment): void {
    const { inside } = foldLots(this.log.records.filter(({ stream }) => stream === this.stream));
    this.stream = this.log.append(null, at, { kind: 'lots-opened', starts: 'lots', inside });
    this.day = at.day;
  }
}
