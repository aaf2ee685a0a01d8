import './turn-figures.css';
import './turn-panel.css';
import type { ComponentChildren } from 'preact';
import { changePart } from '../../application/turn/change-part';
import { partInHand } from '../../application/turn/part-in-hand';
import type { Turn } from '../../domain/turn/turn';
import { pace as words } from '../../i18n/en/pace';
import { useApp } from '../app';
import { EndQuestion } from './end-question';
import { OutcomeChoice } from './outcome-choice';
import { PartChoice } from './part-choice';
import { ReasonChoice } from './reason-choice';
import { RunningFigures } from './running-figures';
import { StoppedFigures } from './stopped-figures';
import type { TurnPanel } from './turn-panel';

interface Props {
  readonly turn: Turn;
  readonly panel: TurnPanel;
  open(panel: TurnPanel, event: MouseEvent): void;
  acted(): void;
  readonly heading: ComponentChildren;
}

/** The upper half: the figures, or the question that was asked for. */
export function TurnUpper({ turn, panel, open, acted, heading }: Props) {
  if (panel === 'figures') {
    return turn.status === 'stopped' ? (
      <StoppedFigures turn={turn} acted={acted} heading={heading} />
    ) : (
      <RunningFigures turn={turn} open={open} heading={heading} />
    );
  }
  return (
    <>
      {heading}
      <div class="pace-panel">
        <div class="pace-panel-content">
          <Question turn={turn} panel={panel} acted={acted} />
        </div>
        {panel !== 'end' && (
          <button type="button" class="button pace-back" onClick={acted}>
            {words.back}
          </button>
        )}
      </div>
    </>
  );
}

function Question({ turn, panel, acted }: Pick<Props, 'turn' | 'panel' | 'acted'>) {
  const { bench } = useApp();
  const cycle = turn.cycles.at(-1);
  const stoppage = turn.stoppages.at(-1);
  if (panel === 'end') return <EndQuestion turn={turn} close={acted} />;
  if (panel === 'change') {
    return (
      <PartChoice
        title={words.changeTitle}
        isTitled
        parts={bench.shop.value.parts}
        last=""
        chosen={turn.inHand.part}
        choose={(part) => {
          changePart(bench, partInHand(part));
          acted();
        }}
      />
    );
  }
  if (panel === 'outcome' && cycle) return <OutcomeChoice turn={turn.id} cycle={cycle} chosen={acted} />;
  if (panel === 'reason' && stoppage) {
    const title = words.reasonTitleAfter((stoppage.toMs ?? turn.lastAtMs) - stoppage.fromMs);
    return <ReasonChoice turn={turn.id} stoppage={stoppage} title={title} chosen={acted} />;
  }
  return null;
}
