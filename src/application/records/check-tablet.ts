import type { CopyAge } from '../../domain/records/copy-age';
import { median } from '../../statistics/median';
import { readCopyAge } from '../backup/read-copy-age';
import type { Bench } from '../bench';
import type { BackupFormat } from '../ports/backup-format';
import type { Installation } from '../ports/installation';
import type { LastingStorage } from '../ports/lasting-storage';
import type { TabletTools } from '../tablet-tools';
import { checkRecords } from './check-records';

/** Enough that a slow one shows, and over in a second where a write takes 20 ms. */
const WRITES = 40;

/** What looking at the tablet came to; null where the browser does not say, or the look failed. */
export interface TabletState {
  /** Steps in which the clock tells time, milliseconds. */
  readonly clockStepMs: number;
  /** Strict writes beside the records, milliseconds. */
  readonly saving: { readonly medianMs: number; readonly longestMs: number; readonly writes: number } | null;
  readonly isLasting: boolean | null;
  readonly isForgetfulTab: boolean;
  readonly roomBytes: number | null;
  readonly screen: 'kept' | 'refused' | 'cannot';
  readonly installation: ReturnType<Installation['way']>;
  readonly isOffline: boolean;
  readonly copy: CopyAge | null;
  readonly records: { readonly count: number; readonly devices: number; readonly breakCount: number } | null;
}

/**
 * Looks at the tablet itself and through every record of the log. It writes nothing where records lie.
 *
 * @param told called with how many records were looked at, again and again
 * @param takes whether a copy can hold a record; left out where none is made
 */
export async function checkTablet(
  bench: Bench,
  { probe, installation }: TabletTools,
  storage: LastingStorage,
  told: (records: number) => void,
  takes?: BackupFormat['takes'],
): Promise<TabletState> {
  const times = await probe.saveTimes(WRITES).catch(() => []);
  const [isLasting, roomBytes, screen, copy] = await Promise.all([
    storage.isGranted(),
    storage.roomBytes(),
    probe.keepsScreenOn(),
    readCopyAge(bench).catch(() => null),
  ]);
  const records = await checkRecords(bench.log, told, takes).catch(() => null);
  return {
    clockStepMs: bench.clock.stepMs(),
    saving: times.length > 0 ? saving(times) : null,
    isLasting,
    isForgetfulTab: storage.isForgetfulTab(),
    roomBytes,
    screen,
    installation: installation.way(),
    isOffline: probe.isOffline(),
    copy,
    records: records && { ...records, count: records.records },
  };
}

function saving(times: readonly number[]): TabletState['saving'] {
  return { medianMs: median(times), longestMs: Math.max(...times), writes: times.length };
}
