import type { ComponentChildren, FunctionComponent } from 'preact';
import { useMemo } from 'preact/hooks';
import { pace } from '../../domain/turn/pace';
import type { Turn } from '../../domain/turn/turn';
import { pace as words } from '../../i18n/en/pace';
import { useLazy } from '../use-lazy';
import { TickingClock } from './ticking-clock';
import type { TurnPanel } from './turn-panel';
import { useAfterPaint } from './use-after-paint';

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
  // A tap begins this part's time anew; what it did to the whole turn is reckoned and drawn a frame later.
  const drawn = useAfterPaint(turn);
  // The same element as before is not drawn again.
  const side = useMemo(() => Side && <Side turn={drawn} open={open} acted={acted} />, [Side, drawn]);
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
      <div class="pace-side-figures">{side}</div>
    </div>
  );
}

/** The first tap does not wait for it. */
const loadSide = async () => (await import('./side-figures')).SideFigures;
