import type { ElementDefinition } from '../../../domain/shop/element-definition';
import { type PaperCell, paperGaps } from '../../../domain/study/paper-study';
import { study } from '../../../i18n/en/study';
import { studyPaper } from '../../../i18n/en/study-paper';
import { formatNumber } from '../../../i18n/format-number';
import { HIGHEST_RATING, LOWEST_RATING } from '../rating-pad';
import { emptyCell, type PaperDraft } from './paper-draft';

const words = studyPaper.questions;

/** What a sheet leaves open, or says oddly: asked about before it is kept, since afterwards it looks as if it were so. */
export function paperQuestions(
  draft: PaperDraft,
  elements: readonly ElementDefinition[],
  cells: readonly PaperCell[],
): string[] {
  const nameOf = (elementIndex: number) => elements[elementIndex]!.name;
  const gaps = paperGaps(elements, cells).map(({ cycle, elementIndex }) =>
    words.cell(nameOf(elementIndex), cycle),
  );
  const typed = new Set(cells.map(({ elementIndex }) => elementIndex));
  const never = elements.flatMap(({ name, elementClass }, index) =>
    elementClass !== 'repetitive' && !typed.has(index) ? [name] : [],
  );
  const rated = cells.filter(
    ({ elementIndex, ms }) => elements[elementIndex]!.work !== 'machine' && ms !== null,
  );
  const odd = rated
    .filter(({ ratingPct }) => ratingPct < LOWEST_RATING || ratingPct > HIGHEST_RATING)
    .map(({ cycle, elementIndex, ratingPct }) =>
      words.rated(words.cell(nameOf(elementIndex), cycle), formatNumber(ratingPct, 0)),
    );
  const unrated = [...new Set(rated.map(({ elementIndex }) => elementIndex))].filter((elementIndex) =>
    isFirstUnrated(draft, elementIndex),
  );
  return [
    ...(gaps.length > 0 ? [words.gaps(study.and(gaps))] : []),
    ...(never.length > 0 ? [words.never(study.and(never))] : []),
    ...(odd.length > 0 ? [words.odd(study.and(odd))] : []),
    ...(unrated.length > 0 ? [words.unrated(study.and(unrated.map(nameOf)))] : []),
  ];
}

/** The first time of the element has no rating: nothing says at which pace it was done. */
function isFirstUnrated({ cells }: PaperDraft, elementIndex: number): boolean {
  const own = Object.entries(cells)
    .map(([key, cell]) => ({ place: key.split(':').map(Number), cell: cell ?? emptyCell }))
    .filter(({ place, cell }) => place[1] === elementIndex && (cell.time !== '' || cell.rating !== ''))
    .sort((a, b) => a.place[0]! - b.place[0]!);
  return own[0]?.cell.rating === '';
}
