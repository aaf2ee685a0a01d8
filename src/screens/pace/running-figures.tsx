import type { ComponentChildren } from 'preact';
import { pace } from '../../domain/turn/pace';
import type { Turn } from '../../domain/turn/turn';
import { pace as words } from '../../i18n/en/pace';
import { useLazy } from '../use-lazy';
import { TargetBar } from './target-bar';
import { TickingClock } from './ticking-clock';
import type { TurnPanel } from './turn-panel';

interface Props {
  readonly turn: Turn;
  open(panel: TurnPanel, event: MouseEvent): void;
  acted(): void;
  readonly heading: ComponentChildren;
}

/** While work runs: this part's time before everything else. */
export function RunningFigures({ turn, open, acted, heading }: Props) {
  const Side = useLazy(true, loadSide);
  return (
    <div class="pace-figures">
      <div class="pace-this-part">
        {heading}
        <TickingClock
          class="pace-clock"
          label={words.thisPart}
          read={(now) => pace(turn, now).partElapsedMs}
        />
        <TargetBar turn={turn} />
      </div>
      <div class="pace-side-figures">{Side && <Side turn={turn} open={open} acted={acted} />}</div>
    </div>
  );
}

/** The first tap does not wait for it. */
const loadSide = async () => (await import('./side-figures')).SideFigures;
