import type { DoubtKind } from './doubt';
import type { Cycle } from './turn';

/** Why a part is in no mean. */
export type LeftOut =
  | DoubtKind
  | 'set-aside'
  | 'learning'
  | 'entered-later'
  | 'interrupted'
  | 'first-off'
  | 'no-time-left';

/** Why a part is in no mean; null for one that is. What a person said goes before what is only asked. */
export function leftOut({
  isCounted,
  setAside,
  doubt,
  isLearning,
  isEntered,
  judgedAs,
}: Cycle): LeftOut | null {
  if (isCounted) return null;
  if (setAside !== '') return 'set-aside';
  if (isEntered) return 'entered-later';
  if (judgedAs === 'interrupted' || judgedAs === 'first-off') return judgedAs;
  if (doubt) return doubt;
  return isLearning ? 'learning' : 'no-time-left';
}
