import './settle.css';
import type { Turn } from '../../domain/turn/turn';
import { settle as words } from '../../i18n/en/settle';
import { timeOfDay } from '../pace/time-of-day';

/** What operators said about their turns of a day, in their own words. Whose they are is not shown. */
export function TurnNotes({ turns }: { turns: readonly Turn[] }) {
  const noted = turns.filter(({ note }) => note !== '');
  if (noted.length === 0) return null;
  return (
    <section class="stack" aria-labelledby="turn-notes-title">
      <h2 id="turn-notes-title">{words.notes}</h2>
      {noted.map(({ id, note, startedAt, lastStamp }) => (
        <p key={id} class="settle-note">
          <strong class="number">{words.noteOf(timeOfDay(startedAt), timeOfDay(lastStamp))}</strong> {note}
        </p>
      ))}
    </section>
  );
}
