import { exclusionEffect, LARGE_EXCLUDED_SHARE } from '../../domain/study/exclusion-effect';
import type { StudyRow } from '../../domain/study/study-row';
import { studySheet as words } from '../../i18n/en/study-sheet';

interface Props {
  readonly elements: readonly string[];
  readonly rows: readonly StudyRow[];
}

/** Says where much, or only one side, was left out. It is information; nothing follows from it by itself. */
export function ExclusionNotes({ elements, rows }: Props) {
  const notes = elements.flatMap((element) => {
    const own = rows.filter((row) => row.element === element);
    const { excluded, share, side } = exclusionEffect(own);
    const said: string[] = [];
    if (share > LARGE_EXCLUDED_SHARE) said.push(words.share(element, excluded, own.length));
    if (excluded > 1 && (side === 'above' || side === 'below'))
      said.push(words.side(element, excluded, side));
    return said;
  });
  if (notes.length === 0) return null;
  return (
    <ul class="study-notes small">
      {notes.map((note) => (
        <li key={note}>{note}</li>
      ))}
    </ul>
  );
}
