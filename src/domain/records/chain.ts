import { checksum } from './checksum';
import type { LogRecord } from './log-record';

/**
 * The checksum of a record, going on from the record before it on the same device: one record missing,
 * doubled, changed or out of place breaks the chain there. It finds damage, not deceit.
 */
export function chainOf(record: Omit<LogRecord, 'chain'>, before: number): number {
  const { device, sequence, stream, stamp, fact } = record;
  return checksum(JSON.stringify([device, sequence, stream, stamp, fact]), before);
}

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
