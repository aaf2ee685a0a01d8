import type { Doubt } from '../../domain/turn/doubt';
import type { Turn } from '../../domain/turn/turn';
import { DoubtLine } from '../settle/doubt-line';
import { operatorOf } from '../settle/question';
import type { TurnPanel } from './turn-panel';

interface Props {
  readonly turn: Turn;
  readonly doubt: Doubt;
  open(panel: TurnPanel, event: MouseEvent): void;
  acted(): void;
}

/** A question with its answers at the station: the operator's own turn, so nobody is asked for a code. */
export function StationDoubt({ turn, doubt, open, acted }: Props) {
  return (
    <DoubtLine
      turn={turn}
      doubt={doubt}
      choose={(choice, event) => {
        // Whoever it is now is chosen beside the end of the turn.
        if ('asks' in choice) return open(choice.asks === 'why' ? 'gap' : 'end', event);
        choice.say(operatorOf(turn));
        acted();
      }}
    />
  );
}
