/**
 * Causes the sheet offers for leaving a reading out. A cause may also be the engineer's own words; it
 * is never empty and never the result of a test alone.
 */
export const exclusionCauses = [
  'missed-break-point',
  'foreign-element',
  'method-not-followed',
  'machine-fault',
  'defect-or-rework',
  'interruption',
  'tablet-slept',
  'page-reloaded',
  'mistaken-tap',
] as const;

export type ExclusionCause = (typeof exclusionCauses)[number];
