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
  const app = useApp();
  const { isReadOnly } = app;
  // A turn that was taken away again is not said to be entered.
  const isEntered = turns.some(({ enteredLater, isWithdrawn }) => enteredLater !== null && !isWithdrawn);
  const [isEntering, setEntering] = useState(false);
  const [told, setTold] = useState('');
  return (
    <>
      <PutRight
        turns={turns}
        isAtStation={false}
        who={who}
        setWho={(next) => {
          setWho(next);
          // What was said of a turn before is no news beside this.
          setTold('');
        }}
      />
      <section class="stack no-print">
        {isEntering ? (
          <EnterTurnForm
            day={day}
            who={who}
            setWho={setWho}
            close={(said, enteredOn) => {
              setEntering(false);
              setTold(said);
              if (enteredOn !== undefined && enteredOn !== day) app.go('review', enteredOn);
            }}
          />
        ) : (
          <div class="row">
            <button type="button" class="button" disabled={isReadOnly} onClick={() => setEntering(true)}>
              {words.open}
            </button>
          </div>
        )}
        <p role="status">{isEntered && told}</p>
      </section>
    </>
  );
}
