import { exclusionEffect, LARGE_EXCLUDED_SHARE } from '../../domain/study/exclusion-effect';
import { rareRatings, tooShortByHand, unfairMeanRating } from '../../domain/study/study-remarks';
import type { StudyRow } from '../../domain/study/study-row';
import type { StudySummary } from '../../domain/study/summarise-study';
import { study as allWords } from '../../i18n/en/study';
import { studySheet as words } from '../../i18n/en/study-sheet';
import { formatNumber } from '../../i18n/format-number';

interface Props {
  readonly elements: readonly string[];
  readonly rows: readonly StudyRow[];
  readonly summary: StudySummary;
}

/**
 * Says where much, or only one side, was left out, what is too short for a hand and which ratings are rare. It is
 * information; nothing follows from it by itself.
 */
export function ExclusionNotes({ elements, rows, summary }: Props) {
  const notes = elements.flatMap((element) => {
    const own = rows.filter((row) => row.element === element);
    const { excluded, timed, share, side } = exclusionEffect(own);
    const said: string[] = [];
    if (share > LARGE_EXCLUDED_SHARE) said.push(words.share(element, excluded, own.length));
    if (timed > 1 && (side === 'above' || side === 'below')) said.push(words.side(element, timed, side));
    return said;
  });
  notes.push(...remarksOf(rows, summary));
  if (notes.length === 0) return null;
  return (
    <ul class="study-notes small">
      {notes.map((note) => (
        <li key={note}>{note}</li>
      ))}
    </ul>
  );
}

function remarksOf(rows: readonly StudyRow[], summary: StudySummary): string[] {
  const short = tooShortByHand(summary);
  const rare = rareRatings(rows);
  const mean = unfairMeanRating(rows);
  return [
    ...(short.length > 0 ? [words.tooShort(allWords.and(short))] : []),
    ...(rare.length > 0 ? [words.rareRating(allWords.and(rare))] : []),
    ...(mean === null ? [] : [words.unfairRating(formatNumber(mean, 0))]),
  ];
}
