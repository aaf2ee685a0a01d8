import { useState } from 'preact/hooks';
import type { Turn } from '../../domain/turn/turn';
import { enterTurn as words } from '../../i18n/en/enter-turn';
import { useApp } from '../app';
import { EnterTurnForm } from '../settle/enter-turn-form';
import { PutRight } from '../settle/put-right';
import type { Who } from '../settle/question';

interface Props {
  readonly day: string;
  readonly turns: readonly Turn[];
  readonly who: Who;
  setWho(who: Who): void;
}

/** What can be put right in the turns of a day, and a turn that nobody tapped. */
export function DayPutRight({ day, turns, who, setWho }: Props) {
  const { isReadOnly } = useApp();
  const [isEntering, setEntering] = useState(false);
  const [told, setTold] = useState('');
  return (
    <>
      <PutRight turns={turns} isAtStation={false} who={who} setWho={setWho} />
      <section class="stack no-print">
        {isEntering ? (
          <EnterTurnForm
            day={day}
            who={who}
            setWho={setWho}
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
