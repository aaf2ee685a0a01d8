import { settle as words } from '../../i18n/en/settle';

interface Props {
  readonly by: string;
  readonly why: string;
  setBy(code: string): void;
  setWhy(reason: string): void;
}

/** Who puts something right, and why: a few reasons to choose from, or words of one's own. */
export function WhoAndWhy({ by, why, setBy, setWhy }: Props) {
  return (
    <div class="stack">
      <div class="settle-who">
        <label class="field">
          <span>{words.yourCode}</span>
          <input
            value={by}
            maxLength={16}
            autocomplete="off"
            onInput={(event) => setBy(event.currentTarget.value)}
          />
        </label>
        <label class="field">
          <span>{words.reason}</span>
          <input
            value={why}
            maxLength={120}
            autocomplete="off"
            onInput={(event) => setWhy(event.currentTarget.value)}
          />
        </label>
      </div>
      {/* biome-ignore lint/a11y/useSemanticElements: a fieldset cannot be laid out as a wrapping row everywhere */}
      <div class="choices" role="group" aria-label={words.reason}>
        {words.reasons.map((reason) => (
          <button
            type="button"
            key={reason}
            class="choice"
            aria-pressed={reason === why}
            onClick={() => setWhy(reason)}
          >
            {reason}
          </button>
        ))}
      </div>
      <p class="quiet small">{words.reasonHint}</p>
    </div>
  );
}
