import { partInHand } from '../../application/turn/part-in-hand';
import { openDoubts } from '../../domain/turn/open-doubts';
import type { Turn } from '../../domain/turn/turn';
import { settle as words } from '../../i18n/en/settle';
import { useApp } from '../app';
import { DoubtList } from '../settle/doubt-list';
import { operatorOf } from '../settle/question';

/** What is still open in the own turn; nothing has to be answered. */
export function OwnDoubts({ turn }: { turn: Turn }) {
  const { parts } = useApp().bench.shop.value;
  const doubts = openDoubts(turn, parts.filter(({ retired }) => !retired).map(partInHand));
  if (doubts.length === 0) return null;
  return (
    <section class="stack" aria-label={words.open}>
      <h2>{words.open}</h2>
      <DoubtList turns={[{ turn, doubts }]} who={operatorOf(turn)} />
      <p class="quiet small">{words.note}</p>
    </section>
  );
}
