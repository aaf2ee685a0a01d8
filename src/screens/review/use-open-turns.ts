import { partInHand } from '../../application/turn/part-in-hand';
import type { Doubt } from '../../domain/turn/doubt';
import { openDoubts } from '../../domain/turn/open-doubts';
import type { Turn } from '../../domain/turn/turn';
import type { ReviewBook } from '../../domain/weeks/review-book';
import { useApp } from '../app';

/** A turn with questions that nobody has answered. */
export interface OpenTurn {
  readonly turn: Turn;
  readonly doubts: readonly Doubt[];
}

/**
 * Of the turns of a day, those with open questions; what fits a part of the shop better is one too. Before a change of
 * the work it is none: the targets that the shop has today are of another method.
 */
export function useOpenTurns(
  turns: readonly { readonly turn: Turn }[],
  day: string,
  book: ReviewBook | null,
): OpenTurn[] {
  const { bench } = useApp();
  const isOfBefore = book?.notes.some(({ isChange, day: since }) => isChange && day < since) ?? true;
  const parts = bench.shop.value.parts.filter(({ retired }) => !retired).map(partInHand);
  return turns
    .map(({ turn }) => ({ turn, doubts: openDoubts(turn, isOfBefore ? [] : parts) }))
    .filter(({ doubts }) => doubts.length > 0);
}
