import type { LogRecord } from '../records/log-record';
import { placeOnTimeline } from '../records/place-on-timeline';
import { recordKey } from '../records/record-key';
import type { StudyFact } from '../records/study-fact';
import { withoutUndone } from '../records/without-undone';
import { type AllowanceTerms, noAllowances } from './allowance-terms';
import { applyCorrections } from './apply-corrections';
import { idleWatch, type Study } from './study';

/** A study that came from a readings table, with what was decided about it since. */
export function foldImportedStudy(
  records: readonly LogRecord[],
  fact: Extract<StudyFact, { kind: 'study-imported' }>,
): Study {
  const first = records[0]!;
  const key = recordKey(first);
  const row = fact.rows[0];
  const terms: AllowanceTerms = row
    ? {
        allowancePct: row.allowancePct,
        basis: row.allowanceBasis,
        machineAllowancePct: row.machineAllowancePct,
      }
    : noAllowances;
  return {
    id: key,
    title: fact.study,
    status: 'imported',
    heading: null,
    method: fact.elements ?? [],
    startedAt: first.stamp,
    undoable: null,
    ended: null,
    watch: idleWatch(first.stamp),
    waits: [],
    ...applyCorrections(
      fact.rows.map((each, place) => ({
        id: `${key}#${place + 1}`,
        row: each,
        isMerged: each.observedMs === null || each.excluded === 'missed-break-point',
        ...(fact.filledIn && each.work !== 'machine' ? { judged: !fact.filledIn.includes(place + 1) } : {}),
      })),
      withoutUndone(placeOnTimeline(records)),
      terms,
      null,
    ),
  };
}
