import { effect, type Signal } from '@preact/signals';
import type { CopyAge } from '../../domain/records/copy-age';
import type { Bench } from '../bench';
import { checkNewestRecords } from '../records/check-records';
import type { BackupTools } from './backup-tools';
import { copyToFolder } from './copy-to-folder';
import { countMissing } from './count-missing';
import { problemOf } from './problem-of';
import { readCopyAge } from './read-copy-age';
import { takeSnapshot } from './take-snapshot';
import type { Upkeep } from './upkeep';

const PERIOD_MS = 600_000;

/**
 * Verifies the newest records once, and counts whether any are gone; then, whenever nothing is timed, takes the day's
 * snapshot, copies into the chosen folder what it lacks of finished work, and tells how old the last copy outside is.
 *
 * Must copy nothing into the folder while records are gone, until somebody settles it.
 * Must copy nothing while something is timed; then it only tells, every ten minutes, how old the copy is.
 *
 * @returns ends it
 */
export function tendRecords(bench: Bench, tools: BackupTools, upkeep: Signal<Upkeep>): () => void {
  let isRunning = false;
  let isAskedAgain = false;
  let isCounted = false;
  /** Not tried again before the log is opened anew: that takes files written in vain, in a tablet that loses some. */
  let isCollapsed = false;
  const tell = (news: Partial<Upkeep>) => {
    upkeep.value = { ...upkeep.peek(), ...news };
  };

  const round = async () => {
    const { log, openedAt } = bench;
    const counts = new Map(await log.countByDevice());
    if (!isCounted) {
      // What was recorded since the opening, the page's own return for one, makes up for nothing that was lost before.
      const since = ((await log.lastRecord())?.sequence ?? 0) - openedAt;
      counts.set(log.device, (counts.get(log.device) ?? 0) - Math.max(0, since));
      isCounted = true;
    }
    const missing = countMissing(counts, tools);
    tell({ missing });
    if (!isCollapsed) {
      const snapshot = await takeSnapshot(bench, tools);
      if (snapshot.ok || snapshot.reason !== 'busy') tell({ snapshot });
      isCollapsed = !snapshot.ok && snapshot.reason === 'count-collapsed';
    }
    const age = await readCopyAge(bench);
    tell({ copyAge: age });
    // While records are gone, what lies in the folder is what they are fetched back from.
    if (missing === 0 && !bench.busy && (await wantsFolderCopy(age, tools))) {
      const copy = await copyToFolder(bench, tools);
      // That a copy was made is a record, and once it is saved the next round reads its age.
      tell({ folderProblem: copy.ok ? '' : copy.reason });
    }
  };
  const run = async () => {
    if (isRunning) {
      isAskedAgain = true;
      return;
    }
    isRunning = true;
    // What cannot be read now is tried again at the next round; the log itself says when it cannot be read.
    await round().catch((error) => tell({ folderProblem: problemOf(error) }));
    isRunning = false;
    if (isAskedAgain) {
      isAskedAgain = false;
      await run();
    }
  };

  checkNewestRecords(bench.log, tools.format.takes).then(
    (breaks) => tell({ breaks }),
    () => {},
  );
  run();
  const stopTimer = bench.clock.every(PERIOD_MS, run);
  const stopEffect = effect(() => {
    const isSaved = bench.saving.value.state === 'saved';
    if (bench.changes.value < 0 || !isSaved) return;
    // Asked at once, a tap would not be said to be saved before all of its turn is folded.
    bench.afterSaving(() => {
      if (!bench.busy) run();
    });
  });
  return () => {
    stopTimer();
    stopEffect();
  };
}

async function wantsFolderCopy(age: CopyAge, { folder }: BackupTools): Promise<boolean> {
  if (!folder || (age.finishedSince === 0 && !age.isDue)) return false;
  return (await folder.chosen())?.mayWrite ?? false;
}
