interface Props {
  readonly label: string;
  readonly value: string;
  readonly onInput: (value: string) => void;
  /** The field is left with another text than it was entered with. */
  readonly onLeave?: () => void;
  readonly hint?: string;
  readonly mode?: 'decimal' | 'numeric';
  readonly narrow?: boolean;
}

/** A line to write on, with its label above. */
export function TextField({ label, value, onInput, onLeave, hint, mode, narrow }: Props) {
  return (
    <label class={narrow ? 'field study-narrow' : 'field'}>
      <span>{label}</span>
      <input
        type="text"
        value={value}
        placeholder={hint}
        inputMode={mode}
        autocomplete="off"
        onInput={(event) => onInput(event.currentTarget.value)}
        onChange={onLeave}
      />
    </label>
  );
}
