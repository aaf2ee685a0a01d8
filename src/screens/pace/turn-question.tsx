import { answerGap } from '../../application/turn/answer-gap';
import type { Cycle, Turn } from '../../domain/turn/turn';
import { printedMs } from '../../domain/turn/whole-seconds';
import { pace as words } from '../../i18n/en/pace';
import { turnQuestion as asks } from '../../i18n/en/turn-question';
import { useApp } from '../app';
import { MoreBelow } from '../more-below';
import { DoubtLine } from '../settle/doubt-line';
import { operatorOf } from '../settle/question';
import { changePartSaid } from './change-part-said';
import { EndQuestion } from './end-question';
import { OutcomeChoice } from './outcome-choice';
import { PartChoice } from './part-choice';
import { PlanChoice } from './plan-choice';
import { ReasonChoice } from './reason-choice';
import { ReasonGrid } from './reason-grid';
import { reasonText } from './reason-text';
import type { TurnPanel } from './turn-panel';
import { UndoChoice } from './undo-choice';

export interface TurnQuestionProps {
  readonly turn: Turn;
  readonly panel: TurnPanel;
  /** Parts that wait to be made good, of turns before too. */
  readonly waiting: readonly Cycle[];
  acted(said?: string): void;
}

/** The question that stands in the place of the figures, and a word where there is more of it below. */
export function TurnQuestion(props: TurnQuestionProps) {
  return (
    <>
      <Question {...props} />
      <MoreBelow />
    </>
  );
}

function Question({ turn, panel, waiting, acted }: TurnQuestionProps) {
  const { bench } = useApp();
  const cycle = turn.cycles.at(-1);
  const stoppage = turn.stoppages.at(-1);
  if (panel === 'end') return <EndQuestion turn={turn} toRework={waiting.length} close={acted} />;
  if (panel === 'change') {
    return (
      <PartChoice
        title={words.changeTitle}
        isTitled
        parts={bench.shop.value.parts}
        last=""
        chosen={turn.inHand.part}
        choose={(part) => {
          acted(changePartSaid(bench, part));
        }}
      />
    );
  }
  if (panel === 'outcome') {
    return <OutcomeChoice turn={turn} cycle={cycle} waiting={waiting} chosen={acted} />;
  }
  if (panel === 'plan') return <PlanChoice turn={turn} done={() => acted()} />;
  if (panel === 'undo') return <UndoChoice turn={turn} done={acted} />;
  const change = turn.doubts.findLast(({ kind }) => kind === 'before-change');
  if (panel === 'doubt' && change) {
    return (
      <DoubtLine
        turn={turn}
        doubt={change}
        choose={(choice) => {
          if ('say' in choice) choice.say(operatorOf(turn));
          acted();
        }}
      />
    );
  }
  const gap = turn.doubts.findLast(({ kind }) => kind === 'gap');
  if (panel === 'gap' && gap) {
    return (
      <ReasonGrid
        title={asks.gapTitle(gap.toMs - gap.fromMs)}
        reason=""
        choose={({ id, label, category }) => {
          answerGap(bench, turn.id, gap.key, { reason: id, label, category });
          acted();
        }}
      />
    );
  }
  if (panel === 'reason' && stoppage) {
    const ms = printedMs({ ...stoppage, toMs: stoppage.toMs ?? turn.lastAtMs });
    return (
      <ReasonChoice
        turn={turn.id}
        stoppage={stoppage}
        title={asks.reasonTitleAfter(ms)}
        chosen={(reason) => acted(asks.saidWhy(ms, reasonText({ reason: reason.id, label: reason.label })))}
      />
    );
  }
  return null;
}
