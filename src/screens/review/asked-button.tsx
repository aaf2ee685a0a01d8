import { useState } from 'preact/hooks';
import { review } from '../../i18n/en/review';

const words = review.takeAway;

interface Props {
  readonly label: string;
  /** What it acts on: buttons of one name tell nobody apart. */
  readonly of: string;
  readonly question: string;
  act(): void;
}

/** A button that asks before it acts: what it takes away moves figures elsewhere. */
export function AskedButton({ label, of, question, act }: Props) {
  const [isAsking, setAsking] = useState(false);
  if (!isAsking) {
    return (
      <button
        type="button"
        class="button plain no-print"
        aria-label={`${label}: ${of}`}
        onClick={() => setAsking(true)}
      >
        {label}
      </button>
    );
  }
  return (
    <span class="stack review-asked no-print">
      <span role="alert">{question}</span>
      <span class="row">
        <button type="button" class="button strong" onClick={act}>
          {label}
        </button>
        <button type="button" class="button" onClick={() => setAsking(false)}>
          {words.keep}
        </button>
      </span>
    </span>
  );
}
