/** A run of parts in a list, by the places of its first and last. */
export interface ChosenRun {
  readonly first: number;
  readonly last: number;
  /** Its end was chosen: only another choice of it, or a beginning behind it, moves it. */
  readonly isEndChosen?: boolean;
}

/**
 * The run after another first one was chosen. One part stays one part: whoever looks for it chooses it once, and a run
 * is made by choosing its other end.
 */
export function withFirst({ first, last, isEndChosen = false }: ChosenRun, place: number): ChosenRun {
  const isOne = first === last && !isEndChosen;
  return { first: place, last: isOne ? place : Math.max(place, last), isEndChosen };
}

/** The run after another last one was chosen; only one before the first moves that too. */
export function withLast({ first }: ChosenRun, place: number): ChosenRun {
  return { first: Math.min(first, place), last: place, isEndChosen: true };
}
