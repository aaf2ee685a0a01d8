import { changePerson } from '../../application/turn/change-person';
import type { Turn } from '../../domain/turn/turn';
import { endQuestion as words } from '../../i18n/en/end-question';
import { useApp } from '../app';

/** Somebody else goes on with the part in hand: one tap on their code. */
export function HandOver({ turn, done }: { turn: Turn; done(): void }) {
  const { bench, isReadOnly } = useApp();
  const others = bench.shop.value.people.filter((code) => code !== turn.person);
  if (others.length === 0) return null;
  return (
    <section class="stack" aria-label={words.handOver}>
      <h2>{words.handOver}</h2>
      <div class="choices">
        {others.map((code) => (
          <button
            type="button"
            key={code}
            class="choice pace-choice"
            disabled={isReadOnly}
            onClick={(event) => {
              changePerson(bench, code, bench.clock.stampOf(event));
              done();
            }}
          >
            <strong>{code}</strong>
          </button>
        ))}
      </div>
      <p class="quiet small">{words.handOverNote}</p>
    </section>
  );
}
