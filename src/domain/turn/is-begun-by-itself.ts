import type { PartInHand } from '../records/turn-fact';

/** Whether a part begins where the one before it ended: not where hands come to it with a tap of their own. */
export function isBegunByItself({ tapping }: PartInHand): boolean {
  return tapping !== 'start-stop';
}
