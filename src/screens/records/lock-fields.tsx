import { copiesWords } from '../../i18n/en/copies';

const words = copiesWords.keep;
/** Shorter ones are guessed in an afternoon, however slowly each guess is made. */
const SHORTEST = 8;

/** A pass-phrase as it is typed, twice; null while the copy is not to be locked. */
export interface PhraseTyped {
  readonly phrase: string;
  readonly again: string;
}

/** What stands against a pass-phrase; empty when nothing does. */
export function phraseFault({ phrase, again }: PhraseTyped): string {
  if (phrase.length < SHORTEST) return words.phraseShort;
  return phrase === again ? '' : words.phraseDiffers;
}

interface Props {
  readonly typed: PhraseTyped | null;
  readonly change: (typed: PhraseTyped | null) => void;
}

/** Whether the copy is locked, and with what. */
export function LockFields({ typed, change }: Props) {
  return (
    <div class="stack records-lock">
      <label class="records-check">
        <input
          type="checkbox"
          checked={typed !== null}
          onChange={(event) => change(event.currentTarget.checked ? { phrase: '', again: '' } : null)}
        />
        <span>{words.lock}</span>
      </label>
      {typed && (
        <>
          <p class="small quiet">{words.lockNote}</p>
          <div class="records-phrases">
            <label class="field">
              <span>{words.phrase}</span>
              <input
                type="password"
                autocomplete="off"
                value={typed.phrase}
                onInput={(event) => change({ ...typed, phrase: event.currentTarget.value })}
              />
            </label>
            <label class="field">
              <span>{words.again}</span>
              <input
                type="password"
                autocomplete="off"
                value={typed.again}
                onInput={(event) => change({ ...typed, again: event.currentTarget.value })}
              />
            </label>
          </div>
        </>
      )}
    </div>
  );
}
