import { partInHand } from '../../application/turn/part-in-hand';
import { openDoubts } from '../../domain/turn/open-doubts';
import type { Turn } from '../../domain/turn/turn';
import { settle as words } from '../../i18n/en/settle';
import { useApp } from '../app';
import { DoubtList } from '../settle/doubt-list';
import { PersonForm } from '../settle/person-form';

/** What is still open in the own turn; nothing has to be answered. */
export function OwnDoubts({ turn }: { turn: Turn }) {
  const { parts } = useApp().bench.shop.value;
  const doubts = openDoubts(turn, parts.filter(({ retired }) => !retired).map(partInHand));
  if (doubts.length === 0) return null;
  const answers = { by: turn.person, why: words.saidAtStation };
  return (
    <section class="stack pace-own-wide">
      <h2>{words.open}</h2>
      <p class="quiet small">{words.note}</p>
      <DoubtList
        turn={turn}
        doubts={doubts}
        answers={answers}
        isAtStation
        askPerson={(close) => <PersonForm turn={turn.id} answers={answers} close={close} />}
      />
    </section>
  );
}
