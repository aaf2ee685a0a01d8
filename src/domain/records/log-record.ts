import type { LotFact } from './lot-fact';
import type { ShopFact } from './shop-fact';
import type { Stamp } from './stamp';
import type { StudyFact } from './study-fact';
import type { TurnFact } from './turn-fact';

/** What happened, without where and when it was recorded. */
export type Fact = ShopFact | TurnFact | StudyFact | LotFact;

/**
 * One thing that happened, written once and never changed. A correction is another record that
 * names the one it corrects.
 *
 * (device, sequence) is the key: each device is the only writer of its own records and numbers them
 * without a gap, so merging two tablets is the union of their records.
 */
export type LogRecord<F extends Fact = Fact> = {
  readonly device: string;
  /** 1, 2, 3 … on this device. */
  readonly sequence: number;
  /** What the record belongs to: 'shop', or the key of the record that started a turn or a study. */
  readonly stream: string;
  readonly stamp: Stamp;
  readonly fact: F;
  /** Checksum of this record, going on from that of the record before it on this device. */
  readonly chain: number;
};

/** The stream of parts, methods, targets and reasons. */
export const SHOP_STREAM = 'shop';
