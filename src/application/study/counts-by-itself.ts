import type { StandardRevision } from '../../domain/shop/fold-standards';
import type { MethodRevision } from '../../domain/shop/shop';
import type { StudyOfPart } from './read-studies-of-part';

/** Whether a study timed another revision of the method than the one in use. */
export function isOtherMethod({ methodRevision }: StudyOfPart, method: MethodRevision | undefined): boolean {
  return methodRevision !== null && method !== undefined && methodRevision !== method.revision;
}

/** Whether studies may be taken together: two revisions of a method hold two versions of one work, and a sum has both. */
export function isOneMethod(studies: readonly Pick<StudyOfPart, 'methodRevision'>[]): boolean {
  return new Set(studies.flatMap(({ methodRevision }) => methodRevision ?? [])).size < 2;
}

/**
 * Whether a study goes into a standard before anybody ticks it. Once a standard is issued, those it rests on do: a
 * newer study moves no figure by itself. What speaks against a study keeps it out either way.
 */
export function countsByItself(
  study: StudyOfPart,
  method: MethodRevision | undefined,
  issued: Pick<StandardRevision, 'studies'> | undefined,
): boolean {
  return study.obstacles.length === 0 && !isOtherMethod(study, method) && !isBesideStandard(study, issued);
}

/** Whether a standard was issued without this study. */
export function isBesideStandard(
  { id }: StudyOfPart,
  issued: Pick<StandardRevision, 'studies'> | undefined,
): boolean {
  return issued !== undefined && !issued.studies.includes(id);
}
