import { ratingsJudged } from '../../domain/study/ratings-judged';
import type { Reading } from '../../domain/study/study';
import { studySheet } from '../../i18n/en/study-sheet';
import { ratingWords } from './rating-note';

const words = studySheet.observation;

/** What the letters beside the readings stand for, only those that occur, and what was remarked. */
export function SheetLegend({ readings }: { readings: readonly Reading[] }) {
  const causes = new Set(readings.flatMap(({ row }) => (row.excluded === null ? [] : [row.excluded])));
  const known = Object.entries(studySheet.causes).filter(([cause]) => causes.has(cause));
  const own = [...causes].filter((cause) => !(cause in studySheet.causes));
  const flags = new Set(readings.map(({ row }) => row.carried.clock_flag));
  const flagged = Object.entries(words.flags).flatMap(([flag, said]) => (flags.has(flag) ? [said] : []));
  const remarks = readings.flatMap(({ row: { element, elementClass, cycle, carried } }) =>
    carried.note && elementClass !== 'foreign' ? [words.remark(element, cycle, carried.note)] : [],
  );
  const judged = ratingsJudged(readings);
  const corrected = readings.flatMap(({ row: { element, cycle }, firstRatingPct }) =>
    firstRatingPct === undefined ? [] : [words.rated(element, cycle, firstRatingPct)],
  );
  const ratings = [
    ...(judged && judged.judged < judged.all ? [`${words.carried} ${ratingWords(judged)}.`] : []),
    ...(corrected.length > 0 ? [`${words.corrected} ${corrected.join(' · ')}`] : []),
  ];
  const lines = [
    ...known.map(([, { letter, words: said }]) => `${letter} ${said}`),
    ...own.map((cause) => `${studySheet.ownCause.letter} ${cause}`),
  ];
  return (
    <>
      {lines.length > 0 && (
        <p class="small quiet">
          {words.legend} {lines.join(' · ')}
        </p>
      )}
      {ratings.map((said) => (
        <p key={said} class="small quiet">
          {said}
        </p>
      ))}
      {flagged.length > 0 && (
        <p class="small quiet">
          {words.counted} {flagged.join(' · ')}
        </p>
      )}
      {remarks.length > 0 && (
        <p class="small">
          {words.remarks} {remarks.join(' · ')}
        </p>
      )}
    </>
  );
}
