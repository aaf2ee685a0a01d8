import type { ComponentChildren, FunctionComponent } from 'preact';
import { pace } from '../../domain/turn/pace';
import type { Turn } from '../../domain/turn/turn';
import { pace as words } from '../../i18n/en/pace';
import { useLazy } from '../use-lazy';
import { TickingClock } from './ticking-clock';
import type { TurnPanel } from './turn-panel';

interface Props {
  readonly turn: Turn;
  /** The bar of the target; null until it is read. */
  readonly Target: FunctionComponent<{ turn: Turn }> | null;
  open(panel: TurnPanel, event: MouseEvent): void;
  acted(): void;
  readonly heading: ComponentChildren;
}

/** While work runs: this part's time before everything else. */
export function RunningFigures({ turn, Target, open, acted, heading }: Props) {
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
        {Target && <Target turn={turn} />}
      </div>
      <div class="pace-side-figures">{Side && <Side turn={turn} open={open} acted={acted} />}</div>
    </div>
  );
}

/** The first tap does not wait for it. */
const loadSide = async () => (await import('./side-figures')).SideFigures;
