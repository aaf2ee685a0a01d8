import type { CopyAge } from '../../domain/records/copy-age';
import type { RecordFault } from '../records/check-records';
import type { SnapshotOutcome } from './take-snapshot';

/** How the records fare: what the frame tells, and nobody has to ask. */
export interface Upkeep {
  /** Null until it was read. */
  readonly copyAge: CopyAge | null;
  /** What is amiss among the newest records of this tablet. */
  readonly breaks: readonly RecordFault[];
  /** Records that were here once and are not any more, until somebody settles it. */
  readonly missing: number;
  /** What became of the last attempt at a daily snapshot; null before the first. */
  readonly snapshot: SnapshotOutcome | null;
  /** Why the last copy into the chosen folder was not made; empty when nothing stands against it. */
  readonly folderProblem: string;
}

export const untended: Upkeep = { copyAge: null, breaks: [], missing: 0, snapshot: null, folderProblem: '' };
