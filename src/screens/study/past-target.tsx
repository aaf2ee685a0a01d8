import type { Part } from '../../domain/shop/shop';
import { studySheet } from '../../i18n/en/study-sheet';
import { studyStandard } from '../../i18n/en/study-standard';

/** That the floor still works to a standard time after another standard was issued. */
export function PastTarget({ part, said }: { part: Part; said(ms: number): string }) {
  if (part.targetSource !== 'past') return null;
  return (
    <p class="fault">
      {studySheet.target.now(said(part.targetMs!))} {studyStandard.targetPast}
    </p>
  );
}
