import { useState } from 'preact/hooks';
import { explainStoppage } from '../../application/turn/explain-stoppage';
import { reclassifyTime } from '../../application/turn/reclassify-time';
import type { StopReason } from '../../domain/records/shop-fact';
import { NOT_STATED, type Stoppage, type Turn } from '../../domain/turn/turn';
import { ledger } from '../../i18n/en/ledger';
import { putRight as words } from '../../i18n/en/put-right';
import { roundedClockFace } from '../../i18n/rounded-clock-face';
import { useApp } from '../app';
import { reasonText } from '../pace/reason-text';
import type { Wanted } from './put-right';
import { clockAt, readStretch, StretchFields } from './stretch-fields';
import { withBreak } from './with-break';

interface Props {
  readonly turn: Turn;
  ask(wanted: Wanted): void;
}

/** Work stood still, and more than that nobody says. */
const unstated: StopReason = { id: NOT_STATED, label: '', category: 'stoppage' };

function isOver(stop: Stoppage): stop is Stoppage & { readonly toMs: number } {
  return stop.toMs !== null;
}

/** What a stop of the turn was, or any stretch of it. Nothing is chosen beforehand: a whole turn is no slip of a finger. */
export function StretchRight({ turn, ask }: Props) {
  const { bench } = useApp();
  const [from, setFrom] = useState('');
  const [to, setTo] = useState('');
  const [chosen, setChosen] = useState('');
  const [isMissing, setMissing] = useState(false);
  const stops = turn.stoppages.filter(isOver);
  const stop = stops.find(({ key }) => key === chosen);
  const choose = (key: string) => {
    const next = stops.find((each) => each.key === key);
    setChosen(key);
    setFrom(next ? clockAt(turn, next.fromMs) : '');
    setTo(next ? clockAt(turn, next.toMs) : '');
  };
  const alter = (set: (next: string) => void) => (next: string) => {
    setChosen('');
    set(next);
  };
  /** @param reason null for work on parts */
  const put = (what: string, reason: StopReason | null) => {
    const stretch = stop ?? readStretch(turn, from, to);
    setMissing(!stretch);
    if (!stretch) return;
    const { fromMs, toMs } = stretch;
    const { id, label, category } = reason ?? { id: '', label: '', category: 'cycle' as const };
    ask({
      word: words.putAs(from, to, roundedClockFace(toMs - fromMs), what),
      ...(stop?.reason === NOT_STATED && { isAnswer: true as const }),
      say: (who) => {
        if (stop && reason) explainStoppage(bench, turn.id, stop.key, reason, who);
        else reclassifyTime(bench, turn.id, { fromMs, toMs, category, reason: id, label, ...who });
      },
    });
  };
  return (
    <div class="stack">
      {stops.length > 0 && (
        <label class="field">
          <span>{words.stop}</span>
          <select value={chosen} onChange={(event) => choose(event.currentTarget.value)}>
            <option value="">–</option>
            {stops.map((each) => (
              <option key={each.key} value={each.key}>
                {`${clockAt(turn, each.fromMs)} · ${roundedClockFace(each.toMs - each.fromMs)} · ${reasonText(each)}`}
              </option>
            ))}
          </select>
        </label>
      )}
      <StretchFields
        from={from}
        to={to}
        setFrom={alter(setFrom)}
        setTo={alter(setTo)}
        isMissing={isMissing}
      />
      <p>{words.was}</p>
      <div class="choices">
        <button type="button" class="button" onClick={() => put(words.work, null)}>
          {words.work}
        </button>
        {[...withBreak(bench.shop.value.reasons), unstated].map((reason) => {
          const { id, label } = reason;
          const word = id === NOT_STATED ? ledger.names.stoppage : reasonText({ reason: id, label });
          return (
            <button type="button" key={id} class="button" onClick={() => put(word, reason)}>
              {word}
            </button>
          );
        })}
      </div>
    </div>
  );
}
