import './turn-figures.css';
import './turn-panel.css';
import type { Signal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import type { LeftToRework } from '../../domain/turn/left-to-rework';
import type { Cycle, Turn } from '../../domain/turn/turn';
import { pace as words } from '../../i18n/en/pace';
import { useLazy } from '../use-lazy';
import { RunningFigures } from './running-figures';
import type { TurnPanel } from './turn-panel';

interface Props {
  readonly turn: Turn;
  readonly panel: TurnPanel;
  /** Parts that turns before left to be reworked; and with those of this turn, the ones that still wait. */
  readonly left: Signal<readonly LeftToRework[]>;
  readonly waiting: readonly Cycle[];
  open(panel: TurnPanel, event: MouseEvent): void;
  /** Back to the figures, with a word about what was said. */
  acted(said?: string): void;
  readonly heading: ComponentChildren;
}

/** The upper half: the figures, or the question that was asked for. */
export function TurnUpper({ turn, panel, left, waiting, open, acted, heading }: Props) {
  // All are read beside the first part, so that they are there when they are wanted.
  const Question = useLazy(true, loadQuestion);
  const Stopped = useLazy(true, loadStopped);
  const Target = useLazy(true, loadTarget);
  if (panel === 'figures') {
    return turn.status === 'stopped' && Stopped ? (
      <Stopped turn={turn} left={left} acted={acted} heading={heading} />
    ) : (
      <RunningFigures turn={turn} Target={Target} open={open} acted={acted} heading={heading} />
    );
  }
  return (
    <>
      {heading}
      <div class="pace-panel">
        <div class="pace-panel-content">
          {Question && <Question turn={turn} panel={panel} waiting={waiting} acted={acted} />}
        </div>
        {panel !== 'end' && (
          <button type="button" class="button pace-back" onClick={() => acted()}>
            {words.back}
          </button>
        )}
      </div>
    </>
  );
}

const loadQuestion = async () => (await import('./turn-question')).TurnQuestion;
const loadTarget = async () => (await import('./target-bar')).TargetBar;
const loadStopped = async () => (await import('./stopped-figures')).StoppedFigures;
