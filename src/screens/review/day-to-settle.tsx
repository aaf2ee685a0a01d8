import { useState } from 'preact/hooks';
import { partInHand } from '../../application/turn/part-in-hand';
import { openDoubts } from '../../domain/turn/open-doubts';
import { settle as words } from '../../i18n/en/settle';
import { useApp } from '../app';
import { DoubtList } from '../settle/doubt-list';
import { PersonForm } from '../settle/person-form';
import { WhoAndWhy } from '../settle/who-and-why';
import { DayCorrections } from './day-corrections';
import { useTurnsOfDay } from './use-turns-of-day';

/** What is open in the turns of a day, and what was put right in them. Nobody is named. */
export function DayToSettle({ day }: { day: string }) {
  const { bench } = useApp();
  const turns = useTurnsOfDay(day);
  const [by, setBy] = useState('');
  const [why, setWhy] = useState('');
  const parts = bench.shop.value.parts.filter(({ retired }) => !retired).map(partInHand);
  const open = turns
    .map(({ turn }) => ({ turn, doubts: openDoubts(turn, parts) }))
    .filter(({ doubts }) => doubts.length > 0);
  const answers = by.trim() === '' ? null : { by: by.trim(), why: why.trim() };
  if (turns.length === 0) return null;
  return (
    <>
      <section class="stack no-print" aria-labelledby="review-settle-title">
        <h2 id="review-settle-title">{words.title}</h2>
        {open.length === 0 ? (
          <p>{words.none}</p>
        ) : (
          <>
            <p class="quiet">{words.note}</p>
            <WhoAndWhy by={by} why={why} setBy={setBy} setWhy={setWhy} />
            {open.map(({ turn, doubts }) => (
              <DoubtList
                key={turn.id}
                turn={turn}
                doubts={doubts}
                answers={answers}
                isAtStation={false}
                askPerson={(close) => <PersonForm turn={turn.id} answers={answers} close={close} />}
              />
            ))}
          </>
        )}
      </section>
      <DayCorrections corrections={turns.flatMap(({ corrections }) => corrections)} />
    </>
  );
}
