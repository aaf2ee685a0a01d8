import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import { answerGap } from '../../application/turn/answer-gap';
import type { Doubt } from '../../domain/turn/doubt';
import type { Turn } from '../../domain/turn/turn';
import { pace } from '../../i18n/en/pace';
import { useApp } from '../app';
import { ReasonGrid } from '../pace/reason-grid';
import { timeOfDay } from '../pace/time-of-day';
import { DoubtLine } from './doubt-line';

interface Props {
  readonly turn: Turn;
  readonly doubts: readonly Doubt[];
  readonly answers: { readonly by: string; readonly why: string } | null;
  readonly isAtStation: boolean;
  /** What stands below a question about the person, while it is asked. */
  askPerson(close: () => void): ComponentChildren;
}

/** The open questions of one turn, each with its answers. */
export function DoubtList({ turn, doubts, answers, isAtStation, askPerson }: Props) {
  const { bench } = useApp();
  const [asked, setAsked] = useState<{ what: 'why' | 'person'; key: string } | null>(null);
  const { wallMs, offsetMin } = turn.startedAt;
  const close = () => setAsked(null);
  return (
    <div class="settle-list">
      {doubts.map((doubt) => (
        <div key={`${doubt.kind} ${doubt.key}`} class="settle-list">
          <DoubtLine
            turn={turn}
            doubt={doubt}
            answers={answers}
            isAtStation={isAtStation}
            when={timeOfDay({ wallMs: wallMs + doubt.fromMs, offsetMin })}
            chooseWhy={() => setAsked({ what: 'why', key: doubt.key })}
            otherPerson={() => setAsked({ what: 'person', key: doubt.key })}
            answered={close}
          />
          {asked?.key === doubt.key && asked.what === 'why' && doubt.kind === 'gap' && (
            <ReasonGrid
              title={pace.gapTitle(doubt.toMs - doubt.fromMs)}
              reason=""
              choose={({ id, label, category }) => {
                const by = isAtStation ? undefined : answers?.by;
                answerGap(bench, turn.id, doubt.key, { reason: id, label, category }, by);
                close();
              }}
            />
          )}
          {asked?.key === doubt.key &&
            asked.what === 'person' &&
            doubt.kind === 'same-person' &&
            askPerson(close)}
        </div>
      ))}
    </div>
  );
}
