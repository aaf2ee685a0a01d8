import { useState } from 'preact/hooks';
import { asTyped, parseNumber, parseWhole } from '../../i18n/parse-number';

interface Props {
  readonly label: string;
  /** 0 where nobody said: the field is empty then. */
  readonly value: number;
  readonly isWhole?: boolean;
  readonly disabled?: boolean;
  /** Called once it is done, not with every figure that is typed. */
  readonly change: (value: number) => void;
}

/** A number that is typed and kept when the field is left. */
export function NumberField({ label, value, isWhole = false, disabled = false, change }: Props) {
  const shown = value > 0 ? asTyped(value) : '';
  const [typed, setTyped] = useState<string | null>(null);
  const done = () => {
    if (typed === null) return;
    setTyped(null);
    const read = typed.trim() === '' ? 0 : isWhole ? parseWhole(typed) : parseNumber(typed);
    // What is no number leaves the one before.
    if (read !== null && read !== value) change(read);
  };
  return (
    <label class="field cell-number">
      <span>{label}</span>
      <input
        value={typed ?? shown}
        inputMode={isWhole ? 'numeric' : 'decimal'}
        autocomplete="off"
        enterkeyhint="done"
        disabled={disabled}
        onInput={(event) => setTyped(event.currentTarget.value)}
        onBlur={done}
        onKeyDown={(event) => {
          if (event.key === 'Enter') event.currentTarget.blur();
        }}
      />
    </label>
  );
}
