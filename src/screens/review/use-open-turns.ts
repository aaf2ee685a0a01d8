import { partInHand } from '../../application/turn/part-in-hand';
import type { Doubt } from '../../domain/turn/doubt';
import { openDoubts } from '../../domain/turn/open-doubts';
import type { Turn } from '../../domain/turn/turn';
import { useApp } from '../app';

/** A turn with questions that nobody has answered. */
export interface OpenTurn {
  readonly turn: Turn;
  readonly doubts: readonly Doubt[];
}

/** Of some turns, those with open questions; what fits a part of the shop better is one too. */
export function useOpenTurns(turns: readonly { readonly turn: Turn }[]): OpenTurn[] {
  const { bench } = useApp();
  const parts = bench.shop.value.parts.filter(({ retired }) => !retired).map(partInHand);
  return turns
    .map(({ turn }) => ({ turn, doubts: openDoubts(turn, parts) }))
    .filter(({ doubts }) => doubts.length > 0);
}
