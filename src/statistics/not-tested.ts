/**
 * What a check on a run of readings answers when the readings are sound but cannot carry it: an
 * expected absence, not an error. Fewer readings than the check needs, or none of them differing.
 */
export type NotTested = {
  readonly tested: false;
  readonly reason: 'too-few-readings' | 'no-spread';
};
