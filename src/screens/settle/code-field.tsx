import { useApp } from '../app';

interface Props {
  readonly label: string;
  readonly value: string;
  choose(code: string): void;
}

/** The code of a person: tapped among those of the shop, or typed. */
export function CodeField({ label, value, choose }: Props) {
  const { people } = useApp().bench.shop.value;
  return (
    <>
      <label class="field">
        <span>{label}</span>
        <input
          value={value}
          maxLength={16}
          autocomplete="off"
          onInput={(event) => choose(event.currentTarget.value)}
        />
      </label>
      {people.length > 0 && (
        // biome-ignore lint/a11y/useSemanticElements: a fieldset cannot be laid out as a wrapping row everywhere
        <div class="choices" role="group" aria-label={label}>
          {people.map((code) => (
            <button
              type="button"
              key={code}
              class="choice"
              aria-pressed={code === value}
              onClick={() => choose(code)}
            >
              {code}
            </button>
          ))}
        </div>
      )}
    </>
  );
}
