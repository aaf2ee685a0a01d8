import { chainOf } from './chain';
import type { Fact, LogRecord } from './log-record';

/** Takes the fact of one version to the next. Pure: an old fact always gives the same new one. */
export type FactUpgrade = (older: Fact) => Fact;

/**
 * In order: the first takes a fact of version 1 to version 2. Append only, and never change one: records that
 * it made lie in shops. A new kind of fact, or a new property that may be left out, needs none.
 */
export const factUpgrades: readonly FactUpgrade[] = [];

/** The version of the facts that this release writes. */
export const RECORD_VERSION = factUpgrades.length + 1;

/**
 * A record of an older version as this release would have written it. Its checksum is made anew, going on
 * from the upgraded record before it, so that upgrading the same records twice gives the same records.
 *
 * @param before the checksum of the upgraded record before it on the same device; 0 for the first
 * @throws {RangeError} upgradeRecord requires a version from 1 to its own
 */
export function upgradeRecord(
  record: LogRecord,
  version: number,
  before: number,
  upgrades: readonly FactUpgrade[] = factUpgrades,
): LogRecord {
  if (!Number.isInteger(version) || version < 1 || version > upgrades.length + 1) {
    throw new RangeError('upgradeRecord requires a version from 1 to its own');
  }
  const steps = upgrades.slice(version - 1);
  if (steps.length === 0) return record;
  const fact = steps.reduce((older, upgrade) => upgrade(older), record.fact);
  const upgraded = { ...record, fact };
  return { ...upgraded, chain: chainOf(upgraded, before) };
}
