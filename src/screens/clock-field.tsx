import { useState } from 'preact/hooks';
import { parseClockTime } from '../i18n/parse-clock-time';

interface Props {
  readonly label: string;
  /** As 07:05 or 07:05:30; empty for none, and as it was typed while it is no time. */
  readonly value: string;
  readonly class?: string;
  readonly disabled?: boolean;
  change(value: string): void;
}

/**
 * A time of day, always by the clock of twenty-four hours as everywhere on the screens: a field of the browser's own shows
 * it as the tablet is set, with seconds and AM beside 14:05.
 */
export function ClockField({ label, value, class: className = '', disabled = false, change }: Props) {
  const [typed, setTyped] = useState(value);
  const isTyped = (parseClockTime(typed) ?? typed) === value;
  return (
    <label class={`field ${className}`}>
      <span>{label}</span>
      <input
        value={isTyped ? typed : value}
        inputMode="numeric"
        autocomplete="off"
        placeholder="0:00"
        maxLength={8}
        disabled={disabled}
        onInput={({ currentTarget }) => {
          setTyped(currentTarget.value);
          change(parseClockTime(currentTarget.value) ?? currentTarget.value);
        }}
        onBlur={() => setTyped(value)}
      />
    </label>
  );
}
