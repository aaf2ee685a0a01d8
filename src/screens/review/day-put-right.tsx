import { useState } from 'preact/hooks';
import type { Turn } from '../../domain/turn/turn';
import { enterTurn as words } from '../../i18n/en/enter-turn';
import { useApp } from '../app';
import { EnterTurnForm } from '../settle/enter-turn-form';
import { PutRight } from '../settle/put-right';

/** What can be put right in the turns of a day, and a turn that nobody tapped. */
export function DayPutRight({ day, turns }: { day: string; turns: readonly Turn[] }) {
  const { isReadOnly } = useApp();
  const [isEntering, setEntering] = useState(false);
  const [told, setTold] = useState('');
  return (
    <>
      <PutRight turns={turns} isAtStation={false} />
      <section class="stack no-print">
        {isEntering ? (
          <EnterTurnForm
            day={day}
            close={(said) => {
              setEntering(false);
              setTold(said);
            }}
          />
        ) : (
          <div class="row">
            <button type="button" class="button" disabled={isReadOnly} onClick={() => setEntering(true)}>
              {words.open}
            </button>
          </div>
        )}
        <p role="status">{told}</p>
      </section>
    </>
  );
}
