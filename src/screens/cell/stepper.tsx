import { useId } from 'preact/hooks';
import { cellWhatIf as says } from '../../i18n/en/cell-what-if';

interface Props {
  readonly label: string;
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly step?: number;
  readonly text?: (value: number) => string;
  readonly change: (value: number) => void;
}

/** A number that is set in steps, with two buttons large enough for a glove. */
export function Stepper({ label, value, low, high, step = 1, text = String, change }: Props) {
  const id = useId();
  const to = (wanted: number) => {
    // Steps of 0.05 must not add up to 0.15000000000000002.
    const next = Number(Math.min(high, Math.max(low, wanted)).toFixed(6));
    if (next !== value) change(next);
  };
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset cannot lay its legend beside its buttons
    <div class="cell-stepper" role="group" aria-labelledby={id}>
      <span id={id}>{label}</span>
      <button
        type="button"
        class="button"
        disabled={value <= low}
        onClick={() => to(value - step)}
        aria-label={says.less(label)}
      >
        −
      </button>
      <output class="number" aria-live="polite">
        {text(value)}
      </output>
      <button
        type="button"
        class="button"
        disabled={value >= high}
        onClick={() => to(value + step)}
        aria-label={says.more(label)}
      >
        +
      </button>
    </div>
  );
}
