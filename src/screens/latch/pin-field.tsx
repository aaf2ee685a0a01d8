interface Props {
  readonly label: string;
  readonly value: string;
  readonly change: (pin: string) => void;
}

/** Digits that are not shown; no password keeper offers to remember them. */
export function PinField({ label, value, change }: Props) {
  return (
    <label class="field latch-field">
      <span>{label}</span>
      <input
        type="password"
        value={value}
        inputMode="numeric"
        autocomplete="off"
        maxLength={12}
        onInput={(event) => change(event.currentTarget.value)}
      />
    </label>
  );
}
