import { study } from '../../i18n/en/study';
import { type KeyAct, useKeyLearning } from '../keys/use-learned-keys';

const words = study.observe.keys;

/** A pedal, or any key, by pressing it once. */
export function KeyTeaching({ acts }: { acts: readonly KeyAct[] }) {
  const { learning, learn, keyOf } = useKeyLearning();
  return acts.map((act) => {
    const key = keyOf(act);
    return (
      <button key={act} type="button" class="button study-action" onClick={() => learn(act)}>
        {learning === act ? words.pressNow : words[act]}
        {learning !== act && key && <span class="study-action-what">{words.known(key)}</span>}
      </button>
    );
  });
}
