import './settle.css';
import type { Doubt } from '../../domain/turn/doubt';
import type { Turn } from '../../domain/turn/turn';
import { useApp } from '../app';
import { type Choice, question } from './question';

/** So soon after an answer nobody has read the question that took its place: a tap was meant for the one before. */
export const UNREAD_MS = 700;

interface Props {
  readonly turn: Turn;
  readonly doubt: Doubt;
  /** When, on which part and by whom, where the question does not stand beside its turn. */
  readonly label?: string;
  choose(choice: Choice, event: MouseEvent): void;
}

/** One open question in one line, with its answers beside it. */
export function DoubtLine({ turn, doubt, label, choose }: Props) {
  const { bench, isReadOnly } = useApp();
  const { text, choices } = question(bench, turn, doubt);
  return (
    <div class="settle-line">
      <p class="number">
        {label && <strong class="settle-label">{label}</strong>}
        {text}
      </p>
      <div class="settle-answers">
        {choices.map((choice) => (
          <button
            type="button"
            key={choice.word}
            class="button"
            disabled={isReadOnly}
            aria-label={`${text} ${choice.word}`}
            onClick={(event) => choose(choice, event)}
          >
            {choice.word}
          </button>
        ))}
      </div>
    </div>
  );
}
