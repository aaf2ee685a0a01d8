import './put-right.css';
import { useState } from 'preact/hooks';
import { withdrawTurn } from '../../application/turn/withdraw-turn';
import type { Turn } from '../../domain/turn/turn';
import { putRight as words } from '../../i18n/en/put-right';
import { settle } from '../../i18n/en/settle';
import { useApp } from '../app';
import { timeOfDay } from '../pace/time-of-day';
import { useBroughtIntoView } from '../use-brought-into-view';
import { BackRight } from './back-right';
import { CountRight } from './count-right';
import { PartsRight } from './parts-right';
import { PersonRight } from './person-right';
import { operatorOf, type Who } from './question';
import { StretchRight } from './stretch-right';
import { WhoForm } from './who-form';

/** What is to be put right, in words, once it is known who says so and why. */
export interface Wanted {
  readonly word: string;
  /** It goes without a code and a reason. */
  readonly isFree?: true;
  /** It is its own reason: a code is enough. */
  readonly isAnswer?: true;
  /** What is said once it is done, where it puts nothing right. */
  readonly told?: string;
  say(who: { readonly by: string; readonly why: string }): void;
}

interface Props {
  readonly turns: readonly Turn[];
  readonly isAtStation: boolean;
  /** Who answers, where it was asked already; nobody at the station. */
  readonly who?: Who;
  setWho?(who: Who): void;
}

/** When a turn began and ended; its codes only where a wrong person is to be found. */
function turnName({ startedAt, lastStamp, people }: Turn, isCoded: boolean): string {
  const codes = isCoded ? people.map(({ person }) => person) : [];
  return [`${timeOfDay(startedAt)}–${timeOfDay(lastStamp)}`, ...new Set(codes)].join(', ');
}

type What = keyof typeof words.whats;

const nobody: Who = { by: '', why: '', isAtStation: false };
const tappedWhats: readonly What[] = ['parts', 'person', 'time', 'count', 'back'];
const emptyWhats: readonly What[] = ['person', 'time', 'count', 'back'];
/** Of a turn that nobody tapped only the sums mean anything. */
const enteredWhats: readonly What[] = ['person', 'away', 'back'];

/** What nobody asked about: a part, a stretch of time, a person. Folded away until it is wanted. */
export function PutRight({ turns: all, isAtStation, who = nobody, setWho }: Props) {
  const { bench, isReadOnly } = useApp();
  const [what, setWhat] = useState<What | null>(null);
  const [id, setId] = useState('');
  const [wanted, setWanted] = useState<Wanted | null>(null);
  const [told, setTold] = useState('');
  const section = useBroughtIntoView<HTMLElement>(`${what ?? ''}${wanted?.word ?? ''}`);
  const turns = all.filter(({ isWithdrawn }) => !isWithdrawn);
  const turn = turns.find((each) => each.id === id) ?? turns.at(-1);
  if (!turn) return null;
  const show = (next: What) => {
    setWhat(next === what ? null : next);
    setWanted(
      next === 'away' && next !== what
        ? { word: words.whats.away, told: words.taken, say: (by) => withdrawTurn(bench, turn, by) }
        : null,
    );
    setTold('');
  };
  const ask = (next: Wanted) => {
    setWanted(next.isFree ? null : next);
    setTold(next.isFree ? words.said(next.word) : '');
    if (next.isFree) next.say(who);
  };
  const whats = turn.enteredLater ? enteredWhats : turn.cycles.length > 0 ? tappedWhats : emptyWhats;
  const chosen = whats.find((each) => each === what) ?? null;
  return (
    <section class="stack no-print settle-right" aria-label={words.title} ref={section}>
      <h2>{words.title}</h2>
      <div class="settle-span">
        {turns.length > 1 && (
          <label class="field">
            <span>{words.turn}</span>
            <select
              value={turn.id}
              onChange={(event) => {
                setId(event.currentTarget.value);
                setWanted(null);
              }}
            >
              {turns.map((each) => (
                <option key={each.id} value={each.id}>
                  {[
                    words.turnLine(turnName(each, what === 'person'), each.cycles.length),
                    ...new Set(each.cycles.map(({ partCode }) => partCode)),
                  ].join(', ')}
                </option>
              ))}
            </select>
          </label>
        )}
        {whats.map((each) => (
          <button
            type="button"
            key={each}
            class="choice"
            aria-pressed={what === each}
            disabled={isReadOnly}
            onClick={() => show(each)}
          >
            {words.whats[each]}
          </button>
        ))}
      </div>
      {chosen === 'parts' && <PartsRight key={turn.id} turn={turn} ask={ask} />}
      {chosen === 'person' && <PersonRight key={turn.id} turn={turn} ask={ask} />}
      {chosen === 'time' && <StretchRight key={turn.id} turn={turn} ask={ask} />}
      {chosen === 'back' && <BackRight key={turn.id} turn={turn} ask={ask} />}
      {chosen === 'count' && <CountRight key={turn.id} turn={turn} ask={ask} />}
      {wanted && (
        <WhoForm
          key={wanted.word}
          who={isAtStation ? { ...operatorOf(turn), why: '' } : who}
          submit={wanted.word}
          needsWhy={!wanted.isAnswer}
          reasons={chosen === 'time' ? settle.tapMissed : settle.chosenWrongly}
          done={(given) => {
            wanted.say(given);
            if (!isAtStation) setWho?.({ ...given, why: '' });
            setWanted(null);
            setWhat(null);
            setTold(wanted.told ?? words.said(wanted.word));
          }}
          close={() => setWanted(null)}
        />
      )}
      {chosen && <p class="quiet small">{chosen === 'away' ? words.awayNote : words.note}</p>}
      <p role="status">{told}</p>
    </section>
  );
}
