import { groupBy } from '../domain/group-by';
import type { StudyRow } from '../domain/study/study-row';
import type { RowDraft } from './read-reading-row';
import { type FigureColumn, WATCH_COLUMN } from './readings-columns';
import type { TableFault, TableProblem } from './table-fault';
import { writeDecimal } from './write-decimal';

const sameInStudy: readonly [FigureColumn, (draft: RowDraft) => string | number][] = [
  ['allowance_pct', ({ row }) => row.allowancePct],
  ['allowance_basis', ({ row }) => row.allowanceBasis],
  ['machine_allowance_pct', ({ row }) => row.machineAllowancePct],
];

const sameInElement: readonly [FigureColumn, (draft: RowDraft) => string | number | null][] = [
  ['element_no', ({ elementNo }) => elementNo],
  ['element_class', ({ row }) => row.elementClass],
  ['work', ({ row }) => row.work],
  ['placement', ({ row }) => row.placement],
  ['units_per_occurrence', ({ row }) => row.unitsPerOccurrence],
  ['parts_per_cycle', ({ row }) => row.partsPerCycle],
];

/**
 * Settles what the rows of one study can only say together: the times of a running watch, the numbers of
 * the elements, and that no row contradicts another. Rows in the order of the file, none with a fault of
 * its own.
 */
export function joinStudyRows(drafts: readonly RowDraft[]): { rows: StudyRow[]; faults: TableFault[] } {
  const first = drafts[0]!;
  const elements = groupBy(drafts, ({ row }) => row.element);
  const faults = [
    ...contradictions(drafts, sameInStudy, 'differs-in-study', first.row.study),
    ...[...elements].flatMap(([element, own]) =>
      contradictions(own, sameInElement, 'differs-in-element', element),
    ),
  ];
  const order = [...elements.keys()];
  const numberOf = new Map(
    order.map((element, place) => [
      element,
      elements.get(element)!.find(({ elementNo }) => elementNo !== null)?.elementNo ?? place + 1,
    ]),
  );
  // The watch speaks only where the study has no times of its own: beside them it is one more remark.
  const byWatch = drafts.every(({ row }) => row.observedMs === null) && drafts.some(({ watch }) => watch);
  const times = byWatch ? watchDifferences(drafts, faults) : drafts.map(({ row }) => row.observedMs);
  const rows = drafts.map((draft, place): StudyRow => {
    const observedMs = times[place]!;
    if (observedMs === null && draft.row.excluded === null) {
      const column = byWatch || !('observed_s' in draft.cells) ? WATCH_COLUMN : 'observed_s';
      faults.push(faultAt(draft, column, { code: 'time-missing' }));
    }
    return { ...draft.row, elementNo: numberOf.get(draft.row.element)!, observedMs };
  });
  return { rows, faults };
}

/**
 * Continuous timing: a time is the difference of the watch at consecutive break points. Where one was not
 * seen, its time is in the next.
 */
function watchDifferences(drafts: readonly RowDraft[], faults: TableFault[]): (number | null)[] {
  let before = { text: '0', ms: 0 };
  return drafts.map((draft) => {
    const { watch } = draft;
    if (!watch) return null;
    if (watch.ms < before.ms) {
      faults.push(
        faultAt(draft, WATCH_COLUMN, { code: 'watch-backwards', text: watch.text, before: before.text }),
      );
    }
    // A difference has no more decimals than its terms; binary numbers would add some (0.3 − 0.1).
    const decimals = Math.min(100, Math.max(decimalsOf(watch.ms), decimalsOf(before.ms)));
    const difference = Number((watch.ms - before.ms).toFixed(decimals));
    before = watch;
    return difference;
  });
}

function decimalsOf(value: number): number {
  return writeDecimal(value).split('.')[1]?.length ?? 0;
}

/** Rows that say something else than the first of them that says anything. */
function contradictions(
  drafts: readonly RowDraft[],
  columns: readonly [FigureColumn, (draft: RowDraft) => string | number | null][],
  code: 'differs-in-study' | 'differs-in-element',
  of: string,
): TableFault[] {
  return columns.flatMap(([column, saidBy]) => {
    const first = drafts.find((draft) => saidBy(draft) !== null);
    if (!first) return [];
    return drafts
      .filter((draft) => saidBy(draft) !== null && saidBy(draft) !== saidBy(first))
      .map((draft) =>
        faultAt(draft, column, {
          code,
          text: String(saidBy(draft)),
          first: String(saidBy(first)),
          firstLine: first.line,
          of,
        }),
      );
  });
}

function faultAt(draft: RowDraft, column: string, problem: TableProblem): TableFault {
  return { ...problem, line: draft.cells[column]?.line ?? draft.line, column };
}
