import type { Reading } from '../../domain/study/study';
import { studySheet } from '../../i18n/en/study-sheet';

const words = studySheet.observation;

/** What the letters beside the readings stand for, only those that occur, and what was remarked. */
export function SheetLegend({ readings }: { readings: readonly Reading[] }) {
  const causes = new Set(readings.flatMap(({ row }) => (row.excluded === null ? [] : [row.excluded])));
  const known = Object.entries(studySheet.causes).filter(([cause]) => causes.has(cause));
  const own = [...causes].filter((cause) => !(cause in studySheet.causes));
  const flags = new Set(readings.map(({ row }) => row.carried.clock_flag));
  const remarks = readings.flatMap(({ row: { element, elementClass, cycle, carried } }) =>
    carried.note && elementClass !== 'foreign' ? [words.remark(element, cycle, carried.note)] : [],
  );
  const lines = [
    ...known.map(([, { letter, words: said }]) => `${letter} ${said}`),
    ...own.map((cause) => `${studySheet.ownCause.letter} ${cause}`),
  ];
  return (
    <>
      <p class="small quiet">
        {lines.length > 0 && `${words.legend} ${lines.join(' · ')}`}
        {Object.entries(words.flags)
          .filter(([flag]) => flags.has(flag))
          .map(([, said]) => ` ${said}.`)}
      </p>
      {remarks.length > 0 && (
        <p class="small">
          {words.remarks} {remarks.join(' · ')}
        </p>
      )}
    </>
  );
}
