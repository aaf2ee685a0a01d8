import { changePerson } from '../../application/turn/change-person';
import { pace } from '../../domain/turn/pace';
import type { Turn } from '../../domain/turn/turn';
import { endQuestion as words } from '../../i18n/en/end-question';
import { useApp } from '../app';
import { PersonChoice } from './person-choice';

/** Somebody else goes on with the part in hand: one tap on their code. */
export function HandOver({ turn, done }: { turn: Turn; done(said: string): void }) {
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
          const at = bench.clock.now();
          const soFarMs = pace(turn, at).partElapsedMs;
          changePerson(bench, code, at);
          done(words.goesOn(code, soFarMs));
        }}
      />
      <p class="quiet small">{words.handOverNote}</p>
    </div>
  );
}
