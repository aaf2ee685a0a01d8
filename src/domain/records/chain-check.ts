import { chainOf } from './chain';
import type { LogRecord } from './log-record';

/** Where a device's records stop being what was written. */
export interface ChainBreak {
  readonly device: string;
  /** The first record that does not follow from the one before it. */
  readonly sequence: number;
  readonly why: 'missing' | 'changed';
}

/**
 * Follows the chain of each device through records in the order of device and sequence. The first record
 * that is looked at of each device is taken on trust, so that a part of a log can be verified too.
 */
export class ChainCheck {
  readonly breaks: ChainBreak[] = [];
  private last: LogRecord | null = null;

  take(record: LogRecord): void {
    const { last } = this;
    const { device, sequence } = record;
    if (last?.device === device) {
      if (sequence !== last.sequence + 1)
        this.breaks.push({ device, sequence: last.sequence + 1, why: 'missing' });
      else if (chainOf(record, last.chain) !== record.chain) {
        this.breaks.push({ device, sequence, why: 'changed' });
      }
    } else if (sequence === 1 && chainOf(record, 0) !== record.chain) {
      this.breaks.push({ device, sequence, why: 'changed' });
    }
    this.last = record;
  }
}
