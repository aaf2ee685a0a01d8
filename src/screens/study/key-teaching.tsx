import { study } from '../../i18n/en/study';
import { keyName } from '../keys/key-name';
import { type KeyAct, useKeyLearning } from '../keys/use-learned-keys';

const words = study.observe.keys;

/** A pedal, or any key, by pressing it once. */
export function KeyTeaching({ acts }: { acts: readonly KeyAct[] }) {
  const { learning, refused, learn, keyOf } = useKeyLearning();
  return acts.map((act) => {
    const key = keyOf(act);
    return (
      <button key={act} type="button" class="button study-action" onClick={() => learn(act)}>
        {learning === act ? words.pressNow : words[act]}
        {learning !== act && refused === act && (
          <span class="study-action-what" role="alert">
            {words.taken}
          </span>
        )}
        {learning !== act && refused !== act && key && (
          <span class="study-action-what">{words.known(keyName(key))}</span>
        )}
      </button>
    );
  });
}
