import type { StudySummary } from '../../domain/study/summarise-study';
import { study } from '../../i18n/en/study';
import { studySheet } from '../../i18n/en/study-sheet';

/** Why a study has no standard time: which elements have no usable reading. */
export function halfMethodReason({ elements }: StudySummary): string {
  const missing = elements.filter(({ elementClass, n }) => elementClass !== 'foreign' && n === 0);
  if (missing.length === 0) return studySheet.noWork;
  return studySheet.halfMethod(study.and(missing.map(({ element }) => element)));
}
