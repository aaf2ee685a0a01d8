import { useId } from 'preact/hooks';

interface Props<T extends string> {
  readonly label: string;
  readonly options: Readonly<Record<T, string>>;
  /** Empty while none is taken. */
  readonly value: T | '';
  readonly onChoose: (value: T) => void;
}

/** One of a few, all of them in sight. */
export function ChoiceRow<T extends string>({ label, options, value, onChoose }: Props<T>) {
  const id = useId();
  return (
    <div class="field">
      <span id={id}>{label}</span>
      {/* biome-ignore lint/a11y/useSemanticElements: a fieldset cannot be a row of a grid everywhere */}
      <div class="choices" role="group" aria-labelledby={id}>
        {(Object.keys(options) as T[]).map((option) => (
          <button
            key={option}
            type="button"
            class="choice"
            aria-pressed={option === value}
            onClick={() => onChoose(option)}
          >
            {options[option]}
          </button>
        ))}
      </div>
    </div>
  );
}
