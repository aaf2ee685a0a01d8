import type { Fact } from '../domain/records/log-record';
import type { Fields } from './backup-shape';

/** What a fact of each kind holds beside its kind. A kind that is missing here does not compile. */
export type FieldsByKind<Any extends Fact> = {
  readonly [Kind in Any['kind']]: Fields<Omit<Extract<Any, { kind: Kind }>, 'kind'>>;
};
