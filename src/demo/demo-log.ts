import { chainOf } from '../domain/records/chain';
import type { Fact, LogRecord } from '../domain/records/log-record';
import { recordKey } from '../domain/records/record-key';
import type { Stamp } from '../domain/records/stamp';

const DEVICE = 'demo';
const MINUTE_MS = 60_000;
const DAY_MS = 86_400_000;
/** Monday 2 March 2026, 07:00. London keeps UTC until the 29th, so the offset is 0 all month. */
const FIRST_SHIFT_MS = Date.UTC(2026, 2, 2, 7);

/** A moment of the shop: its working day, from 0, and minutes from 07:00. */
export interface Moment {
  readonly day: number;
  readonly minute: number;
}

/** Collects the records of the invented shop in the order in which its tablet would have written them. */
export class DemoLog {
  readonly records: LogRecord[] = [];
  private chain = 0;
  private readonly due: { readonly wallMs: number; readonly write: () => void }[] = [];

  /** Writes a fact to a stream, or begins a stream of its own (null), and gives the record's key. */
  append(stream: string | null, at: Moment, fact: Fact): string {
    const stamp = stampOf(at);
    while (this.due[0] && this.due[0].wallMs <= stamp.wallMs) this.due.shift()!.write();
    const name = { device: DEVICE, sequence: this.records.length + 1 };
    const key = recordKey(name);
    const record = { ...name, stream: stream ?? key, stamp, fact };
    this.chain = chainOf(record, this.chain);
    this.records.push({ ...record, chain: this.chain });
    return key;
  }

  /** The clocks of the tablet at a moment. */
  stampAt(moment: Moment): Stamp {
    return stampOf(moment);
  }

  /** Lets something be written when the records reach that moment: a study goes on beside a turn. */
  at(moment: Moment, write: () => void): void {
    const { wallMs } = stampOf(moment);
    const later = this.due.findIndex((other) => other.wallMs > wallMs);
    this.due.splice(later < 0 ? this.due.length : later, 0, { wallMs, write });
  }
}

/** Every day is a run of its own, begun at 07:00. Weekends are skipped. */
function stampOf({ day, minute }: Moment): Stamp {
  const monoMs = Math.round(minute * MINUTE_MS);
  const dawnMs = FIRST_SHIFT_MS + (day + 2 * Math.floor(day / 5)) * DAY_MS;
  return {
    run: `demo-${new Date(dawnMs).toISOString().slice(0, 10)}`,
    monoMs,
    wallMs: dawnMs + monoMs,
    zone: 'Europe/London',
    offsetMin: 0,
  };
}
