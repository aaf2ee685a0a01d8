import { changePerson } from '../../application/turn/change-person';
import type { Turn } from '../../domain/turn/turn';
import { endQuestion as words } from '../../i18n/en/end-question';
import { useApp } from '../app';
import { PersonChoice } from './person-choice';

/** Somebody else goes on with the part in hand: one tap on their code. */
export function HandOver({ turn, done }: { turn: Turn; done(): void }) {
  const { bench } = useApp();
  return (
    <div class="stack">
      <PersonChoice
        title={words.handOver}
        isNeeded={false}
        people={bench.shop.value.people.filter((code) => code !== turn.person)}
        last=""
        chosen=""
        choose={(code) => {
          changePerson(bench, code, bench.clock.now());
          done();
        }}
      />
      <p class="quiet small">{words.handOverNote}</p>
    </div>
  );
}
