import { AFTERNOON_BLOCK, workBlocks } from './shift-plan';

/** What the shop does when the clock leaves a block of work. Minutes from 07:00. */
export interface ShiftTurns {
  pauseUntil(minute: number): void;
  handOver(minute: number): void;
}

/** Where the shop is in its day: work begins inside a block, and may end after it. */
export class ShiftClock {
  minute: number = workBlocks[0].from;
  private block = 0;

  constructor(
    readonly day: number,
    private readonly turns: ShiftTurns,
  ) {}

  /** Goes on to the next planned work, over breaks and lunch. False: the day is over. */
  reachWork(): boolean {
    while (this.minute >= workBlocks[this.block]!.to) {
      this.block += 1;
      const next = workBlocks[this.block];
      if (!next) return false;
      this.minute = Math.max(this.minute, next.from);
      if (this.block === AFTERNOON_BLOCK) this.turns.handOver(next.from);
      else this.turns.pauseUntil(next.from);
    }
    return true;
  }
}
