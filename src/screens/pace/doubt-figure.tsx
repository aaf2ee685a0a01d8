import type { Doubt } from '../../domain/turn/doubt';
import type { Turn } from '../../domain/turn/turn';
import { pace as words } from '../../i18n/en/pace';
import { useLazy } from '../use-lazy';
import type { TurnPanel } from './turn-panel';

interface Props {
  readonly turn: Turn;
  readonly doubt: Doubt;
  open(panel: TurnPanel, event: MouseEvent): void;
  acted(): void;
}

/** The newest open question, in one line beside the figures. Read with the first one of the day. */
export function DoubtFigure({ turn, doubt, open, acted }: Props) {
  const StationDoubt = useLazy(true, loadStationDoubt);
  if (doubt.kind === 'before-change') {
    return (
      <button type="button" class="button pace-why number" onClick={(event) => open('doubt', event)}>
        {words.sayWhat(doubt.toMs - doubt.fromMs, doubt.suggestion.to.partCode)}
      </button>
    );
  }
  return StationDoubt && <StationDoubt turn={turn} doubt={doubt} open={open} acted={acted} />;
}

const loadStationDoubt = async () => (await import('./station-doubt')).StationDoubt;
