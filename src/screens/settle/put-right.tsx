import './put-right.css';
import { useState } from 'preact/hooks';
import type { Turn } from '../../domain/turn/turn';
import { putRight as words } from '../../i18n/en/put-right';
import { useApp } from '../app';
import { timeOfDay } from '../pace/time-of-day';
import { CountRight } from './count-right';
import { PartsRight } from './parts-right';
import { operatorOf, type Who } from './question';
import { StretchRight } from './stretch-right';
import { WhoForm } from './who-form';

/** What is to be put right, in words, once it is known who says so and why. */
export interface Wanted {
  readonly word: string;
  /** It goes without a code and a reason. */
  readonly isFree?: true;
  say(who: { readonly by: string; readonly why: string }): void;
}

interface Props {
  readonly turns: readonly Turn[];
  readonly isAtStation: boolean;
}

/** What nobody asked about: a part, a stretch of time, a person. Folded away until it is wanted. */
export function PutRight({ turns, isAtStation }: Props) {
  const { isReadOnly } = useApp();
  const [what, setWhat] = useState<'parts' | 'time' | 'count' | null>(null);
  const [id, setId] = useState('');
  const [wanted, setWanted] = useState<Wanted | null>(null);
  const [who, setWho] = useState<Who>({ by: '', why: '', isAtStation: false });
  const [told, setTold] = useState('');
  const turn = turns.find((each) => each.id === id) ?? turns.at(-1);
  if (!turn) return null;
  const show = (next: typeof what) => {
    setWhat(next === what ? null : next);
    setWanted(null);
    setTold('');
  };
  const ask = (next: Wanted) => {
    setWanted(next.isFree ? null : next);
    setTold(next.isFree ? words.said : '');
    if (next.isFree) next.say(who);
  };
  const hasParts = turn.cycles.length > 0 && !turn.enteredLater;
  return (
    <section class="stack no-print settle-right" aria-label={words.title}>
      <h2>{words.title}</h2>
      <div class="settle-span">
        {turns.length > 1 && (
          <label class="field">
            <span>{words.turn}</span>
            <select value={turn.id} onChange={(event) => setId(event.currentTarget.value)}>
              {turns.map((each) => (
                <option key={each.id} value={each.id}>
                  {words.turnLine(timeOfDay(each.startedAt), each.cycles.length)}
                </option>
              ))}
            </select>
          </label>
        )}
        {(['parts', 'time', 'count'] as const).map(
          (each) =>
            (each !== 'parts' || hasParts) && (
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
            ),
        )}
      </div>
      {what === 'parts' && hasParts && <PartsRight key={turn.id} turn={turn} ask={ask} />}
      {what === 'time' && <StretchRight key={turn.id} turn={turn} ask={ask} />}
      {what === 'count' && (
        <CountRight
          key={turn.id}
          turn={turn}
          done={() => {
            setWhat(null);
            setTold(words.said);
          }}
        />
      )}
      {wanted && (
        <WhoForm
          key={wanted.word}
          who={isAtStation ? { ...operatorOf(turn), why: '' } : who}
          answer={wanted.word}
          needsWhy
          done={(given) => {
            wanted.say(given);
            if (!isAtStation) setWho({ ...given, why: '' });
            setWanted(null);
            setTold(words.said);
          }}
          close={() => setWanted(null)}
        />
      )}
      {what && <p class="quiet small">{words.note}</p>}
      <p role="status">{told}</p>
    </section>
  );
}
