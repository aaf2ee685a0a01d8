import { pace } from '../../domain/turn/pace';
import type { Turn } from '../../domain/turn/turn';
import { pace as words } from '../../i18n/en/pace';
import { useApp } from '../app';
import { partTitle } from './part-title';
import { TickingClock } from './ticking-clock';
import type { TurnPanel } from './turn-panel';

interface Props {
  readonly turn: Turn;
  readonly panel: TurnPanel;
  readonly isAwake: boolean;
}

/** Who, and on which part; this part's time while a question hides it; and a word when the tablet may sleep. */
export function TurnHeading({ turn, panel, isAwake }: Props) {
  const { parts } = useApp().bench.shop.value;
  const title =
    panel === 'change' ? words.changeTitle : words.turnHeading(turn.person, partTitle(parts, turn.inHand));
  return (
    <header class="pace-heading">
      <h1>{title}</h1>
      {panel !== 'figures' && (
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
