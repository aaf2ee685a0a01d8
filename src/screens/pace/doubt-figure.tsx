import type { Doubt } from '../../domain/turn/doubt';
import type { Turn } from '../../domain/turn/turn';
import { useLazy } from '../use-lazy';
import type { TurnPanel } from './turn-panel';

interface Props {
  readonly turn: Turn;
  readonly doubt: Doubt;
  open(panel: TurnPanel, event: MouseEvent): void;
  acted(): void;
}

/** The newest open question, in one quiet line beside the figures. Read with the first one of the day. */
export function DoubtFigure({ turn, doubt, open, acted }: Props) {
  const DoubtLine = useLazy(true, loadDoubtLine);
  if (!DoubtLine) return null;
  return (
    <DoubtLine
      turn={turn}
      doubt={doubt}
      isAtStation
      answers={atStation}
      chooseWhy={(event) => open('gap', event)}
      otherPerson={(event) => open('end', event)}
      answered={acted}
    />
  );
}

/** The operator's own turn: nobody is asked for a code. */
const atStation = { by: '', why: '-' };

const loadDoubtLine = async () => (await import('../settle/doubt-line')).DoubtLine;
