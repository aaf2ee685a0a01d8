import type { Turn } from '../../domain/turn/turn';
import { useApp } from '../app';
import { operatorOf, question } from '../settle/question';

/** What the time before the last change of part was, asked where the figures were. */
export function DoubtChoice({ turn, answered }: { turn: Turn; answered(): void }) {
  const { bench, isReadOnly } = useApp();
  const doubt = turn.doubts.findLast(({ kind }) => kind === 'before-change');
  if (!doubt) return null;
  const { text, choices } = question(bench, turn, doubt);
  return (
    <section class="pace-reasons" aria-label={text}>
      <h2>{text}</h2>
      <div class="pace-reason-grid">
        {choices.map((choice) => (
          <button
            type="button"
            key={choice.word}
            class="choice"
            disabled={isReadOnly}
            onClick={() => {
              if ('say' in choice) choice.say(operatorOf(turn));
              answered();
            }}
          >
            {choice.word}
          </button>
        ))}
      </div>
    </section>
  );
}
