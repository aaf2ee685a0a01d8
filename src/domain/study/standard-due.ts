import type { IssuedStandard } from '../records/standard-fact';
import type { StandardRevision } from '../shop/fold-standards';
import type { MethodRevision } from '../shop/shop';
import type { Study } from './study';

/** Why a standard is due for a check study. */
export type DueCause = 'date' | 'method' | 'conditions' | 'drift' | 'one-operator';

/** Small changes add up: a later study this far from the standard, as a share, asks for a check. */
export const DRIFT = 0.05;

/**
 * Whether a study can show that work drifted from a standard since: of the same method, and begun after it was issued. A
 * sheet or a table has a day only, and on the day of the issue nobody can say which came first.
 */
export function isLaterStudy(
  study: { readonly study: Study; readonly day: string; readonly methodRevision: number | null },
  standard: Pick<StandardRevision, 'methodRevision' | 'issuedOn' | 'issuedAtMs'>,
): boolean {
  const { heading, startedAt } = study.study;
  if ((study.methodRevision ?? standard.methodRevision) !== standard.methodRevision) return false;
  return heading ? startedAt.wallMs > standard.issuedAtMs : study.day > standard.issuedOn;
}

/**
 * What makes a standard due for a check study: its day has come, the method has another revision, it is worked under
 * other conditions, a later study lies more than 5 % from it, or it rests on one operator alone.
 */
export function standardDue(
  standard: IssuedStandard,
  now: {
    readonly day: string;
    readonly method: Pick<MethodRevision, 'revision' | 'conditions'> | undefined;
    /** Normal times of later studies of the part, milliseconds. */
    readonly laterNormalMs: readonly number[];
  },
): DueCause[] {
  const causes: DueCause[] = [];
  if (now.day >= standard.checkBy) causes.push('date');
  if (now.method && now.method.revision !== standard.methodRevision) causes.push('method');
  if (now.method && now.method.conditions !== standard.conditions) causes.push('conditions');
  const isFar = (ms: number) => Math.abs(ms / standard.normalTimeMs - 1) > DRIFT;
  if (now.laterNormalMs.some(isFar)) causes.push('drift');
  if (standard.operators.length < 2) causes.push('one-operator');
  return causes;
}
