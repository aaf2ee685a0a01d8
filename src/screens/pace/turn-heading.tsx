import { pace } from '../../domain/turn/pace';
import type { Turn } from '../../domain/turn/turn';
import { pace as words } from '../../i18n/en/pace';
import { useApp } from '../app';
import { partTitle } from './part-title';
import { TickingClock } from './ticking-clock';

interface Props {
  readonly turn: Turn;
  /** This part's time, small, while a question stands in the place of the figures. */
  readonly hasClock: boolean;
  readonly isAwake: boolean;
}

/** Who, and on which part; and a word when the tablet may go to sleep. */
export function TurnHeading({ turn, hasClock, isAwake }: Props) {
  const { parts } = useApp().bench.shop.value;
  return (
    <header class="pace-heading">
      <h1>{words.turnHeading(turn.person, partTitle(parts, turn.inHand))}</h1>
      {hasClock && (
        <TickingClock
          class="pace-heading-clock"
          label={words.thisPart}
          read={(now) => pace(turn, now).partElapsedMs}
        />
      )}
      {!isAwake && <p class="pace-sleep">{words.screenMaySleep}</p>}
    </header>
  );
}
