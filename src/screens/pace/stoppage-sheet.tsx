import { useState } from 'preact/hooks';
import { answerGap } from '../../application/turn/answer-gap';
import { explainStoppage } from '../../application/turn/explain-stoppage';
import { stoodStill } from '../../domain/turn/stood-still';
import { NOT_STATED, type Turn } from '../../domain/turn/turn';
import { printedMs } from '../../domain/turn/whole-seconds';
import { ownRecord as own } from '../../i18n/en/own-record';
import { turnQuestion as asks } from '../../i18n/en/turn-question';
import { clockFace } from '../../i18n/format-duration';
import { useApp } from '../app';
import { useBroughtIntoView } from '../use-brought-into-view';
import { ReasonGrid } from './reason-grid';
import { reasonText } from './reason-text';
import { timeOfDay } from './time-of-day';

interface Props {
  readonly turn: Turn;
  /** Those of which nobody said why, and nothing where there is none. */
  readonly isUnsaidOnly?: boolean;
}

/** Every stoppage of the turn, and every gap that was one; its reason can still be said, or said otherwise. */
export function StoppageSheet({ turn, isUnsaidOnly = false }: Props) {
  const { bench, isReadOnly } = useApp();
  const [open, setOpen] = useState('');
  const why = useBroughtIntoView<HTMLDivElement>(open);
  const { startedAt } = turn;
  const stoppages = stoodStill(turn).filter(({ reason }) => !isUnsaidOnly || reason === NOT_STATED);
  const asked = stoppages.find(({ key }) => key === open);
  if (isUnsaidOnly && stoppages.length === 0) return null;
  return (
    <section class="stack">
      <h2>{own.stoppagesTitle}</h2>
      {stoppages.length === 0 ? (
        <p>{own.noStoppages}</p>
      ) : (
        <table class="sheet">
          <thead>
            <tr>
              <th>{own.column.when}</th>
              <th>{own.column.duration}</th>
              <th class="words" colSpan={2}>
                {own.column.why}
              </th>
            </tr>
          </thead>
          <tbody>
            {stoppages.map((stoppage) => (
              <tr key={`${stoppage.key} ${stoppage.fromMs}`}>
                <td>
                  {timeOfDay({ wallMs: startedAt.wallMs + stoppage.fromMs, offsetMin: startedAt.offsetMin })}
                </td>
                <td>{clockFace(printedMs(stoppage))}</td>
                <td class="words">{reasonText(stoppage)}</td>
                <td>
                  {stoppage.is === 'put-right' ? (
                    own.putRight
                  ) : (
                    <button
                      type="button"
                      class="button pace-say"
                      disabled={isReadOnly}
                      onClick={() => setOpen(stoppage.key)}
                    >
                      {stoppage.reason === NOT_STATED ? own.sayWhyShort : own.change}
                    </button>
                  )}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      {asked && (
        <div ref={why}>
          <ReasonGrid
            title={asks.reasonTitleAfter(printedMs(asked))}
            reason={asked.reason}
            choose={(reason) => {
              const { id, label, category } = reason;
              if (asked.is === 'gap') answerGap(bench, turn.id, asked.key, { reason: id, label, category });
              else explainStoppage(bench, turn.id, asked.key, reason);
              setOpen('');
            }}
          />
        </div>
      )}
    </section>
  );
}
