import { useState } from 'preact/hooks';
import { NOT_STATED, type Stoppage, type Turn } from '../../domain/turn/turn';
import { printedMs } from '../../domain/turn/whole-seconds';
import { ownRecord as own } from '../../i18n/en/own-record';
import { turnQuestion as asks } from '../../i18n/en/turn-question';
import { clockFace } from '../../i18n/format-duration';
import { useApp } from '../app';
import { ReasonChoice } from './reason-choice';
import { reasonText } from './reason-text';
import { timeOfDay } from './time-of-day';

/** Every stoppage of the turn; its reason can still be said, or said otherwise. */
export function StoppageSheet({ turn }: { turn: Turn }) {
  const { isReadOnly } = useApp();
  const [open, setOpen] = useState('');
  const { stoppages, startedAt } = turn;
  const asked = stoppages.find(({ key }) => key === open);
  const lengthOf = ({ fromMs, toMs }: Stoppage) => printedMs({ fromMs, toMs: toMs ?? turn.lastAtMs });
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
                <td>{clockFace(lengthOf(stoppage))}</td>
                <td class="words">{reasonText(stoppage)}</td>
                <td>
                  <button
                    type="button"
                    class="button pace-say"
                    disabled={isReadOnly}
                    onClick={() => setOpen(stoppage.key)}
                  >
                    {stoppage.reason === NOT_STATED ? own.sayWhyShort : own.change}
                  </button>
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      {asked && (
        <ReasonChoice
          turn={turn.id}
          stoppage={asked}
          title={asks.reasonTitleAfter(lengthOf(asked))}
          chosen={() => setOpen('')}
        />
      )}
    </section>
  );
}
