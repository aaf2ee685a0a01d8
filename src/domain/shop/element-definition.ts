export const elementClasses = ['repetitive', 'occasional', 'foreign'] as const;
export const workKinds = ['manual', 'machine', 'walking', 'attention'] as const;
export const placements = ['external', 'internal'] as const;

export type ElementClass = (typeof elementClasses)[number];
/** Who governs the element's time; a machine-controlled element is never rated. */
export type WorkKind = (typeof workKinds)[number];
/** Internal work is done while the machine runs, external work while it stands. */
export type Placement = (typeof placements)[number];

/** A distinct part of a method, chosen so that it can be seen, timed and analysed. */
export interface ElementDefinition {
  readonly name: string;
  /** The instant that ends the element: best something that can be heard. */
  readonly breakPoint: string;
  readonly elementClass: ElementClass;
  readonly work: WorkKind;
  readonly placement: Placement;
  /** An occasional element occurs once in this many work units; 1 for a repetitive one. */
  readonly unitsPerOccurrence: number;
  /** What a variable element grows with, as `perimeter, m`. Left out: constant, the same for every size. */
  readonly driver?: string;
}
