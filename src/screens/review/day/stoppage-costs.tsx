import { useState } from 'preact/hooks';
import { absorbStoppage } from '../../../application/review/absorb-stoppage';
import type { AttendedTurn } from '../../../domain/day/summarise-day';
import { readTargetTime } from '../../../domain/shop/read-target-time';
import type { Stoppage, Turn } from '../../../domain/turn/turn';
import { printedMs } from '../../../domain/turn/whole-seconds';
import { review } from '../../../i18n/en/review';
import { reviewDayMore } from '../../../i18n/en/review-day-more';
import { clockFace } from '../../../i18n/format-duration';
import { useApp } from '../../app';
import { reasonName } from '../reason-name';

const words = reviewDayMore.cost;
const MINUTE_MS = 60_000;

interface Stood {
  readonly turn: Turn;
  readonly stoppage: Stoppage;
  readonly lengthMs: number;
  readonly costMs: number;
}

/** Every stoppage of a day with what it cost, and a way to say that it cost less. */
export function StoppageCosts({ turns }: { turns: readonly AttendedTurn[] }) {
  const { isReadOnly } = useApp();
  const [asked, setAsked] = useState('');
  const stood = turns.flatMap(costs);
  if (stood.length === 0) return <p>{words.none}</p>;
  return (
    <>
      <table class="sheet review-sheet">
        <thead>
          <tr>
            <th scope="col">{words.at}</th>
            <th scope="col" class="words">
              {review.lost.reason}
            </th>
            <th scope="col">{words.length}</th>
            <th scope="col">{words.cost}</th>
            {!isReadOnly && <td class="no-print" />}
          </tr>
        </thead>
        <tbody>
          {stood.map(({ turn, stoppage, lengthMs, costMs }) => (
            <tr key={stoppage.key}>
              <th scope="row">{clock(turn, stoppage.fromMs)}</th>
              <td class="words">{reasonName(stoppage)}</td>
              <td>{clockFace(lengthMs)}</td>
              <td>{clockFace(costMs)}</td>
              {!isReadOnly && (
                <td class="no-print">
                  <button type="button" class="button plain" onClick={() => setAsked(stoppage.key)}>
                    {words.change}
                  </button>
                </td>
              )}
            </tr>
          ))}
        </tbody>
      </table>
      <p class="small quiet">{words.note}</p>
      {stood
        .filter(({ stoppage }) => stoppage.key === asked)
        .map((each) => (
          <AbsorbedForm key={asked} stood={each} close={() => setAsked('')} />
        ))}
    </>
  );
}

function AbsorbedForm({ stood, close }: { stood: Stood; close: () => void }) {
  const { bench } = useApp();
  const { turn, stoppage, lengthMs } = stood;
  const [typed, setTyped] = useState('');
  const [by, setBy] = useState('');
  const read = typed.trim() === '0' ? { ok: true as const, targetMs: 0 } : readTargetTime(typed);
  const isTooLong = read.ok && read.targetMs > lengthMs;
  const save = (event: Event) => {
    event.preventDefault();
    if (!read.ok || isTooLong) return;
    absorbStoppage(bench, { turn: turn.id, stoppage: stoppage.key, absorbedMs: read.targetMs, by });
    close();
  };
  return (
    <form class="panel stack review-form no-print" onSubmit={save}>
      <p>{words.asked(reasonName(stoppage), clockFace(lengthMs))}</p>
      <label class="field">
        <span>{words.absorbed}</span>
        <input value={typed} inputMode="decimal" onInput={(event) => setTyped(event.currentTarget.value)} />
      </label>
      {typed !== '' && !read.ok && <p role="status">{words.notATime}</p>}
      {isTooLong && <p role="status">{words.tooLong}</p>}
      <label class="field">
        <span>{review.note.by}</span>
        <input value={by} maxLength={20} onInput={(event) => setBy(event.currentTarget.value)} />
      </label>
      <div class="row">
        <button type="submit" class="button strong" disabled={!read.ok || isTooLong}>
          {words.save}
        </button>
        <button type="button" class="button" onClick={close}>
          {review.note.cancel}
        </button>
      </div>
    </form>
  );
}

/** Of what was lost: set-ups and planned breaks are no losses. */
function costs({ turn, absorbedMs }: AttendedTurn): Stood[] {
  return turn.stoppages
    .filter(({ category, toMs }) => (category === 'stoppage' || category === 'called-away') && toMs !== null)
    .map((stoppage) => {
      const lengthMs = printedMs({ fromMs: stoppage.fromMs, toMs: stoppage.toMs! });
      const absorbed = Math.min(lengthMs, absorbedMs.get(stoppage.key) ?? 0);
      return { turn, stoppage, lengthMs, costMs: lengthMs - absorbed };
    });
}

function clock({ startedAt }: Turn, atMs: number): string {
  return new Date(startedAt.wallMs + atMs + startedAt.offsetMin * MINUTE_MS).toISOString().slice(11, 16);
}
