import './put-right.css';
import { capture } from '../../domain/turn/capture';
import { enteredShare } from '../../domain/turn/entered-share';
import type { Turn } from '../../domain/turn/turn';
import { enterTurn as words } from '../../i18n/en/enter-turn';

/** What keeps some turns' averages from speaking for all that was made; nothing where there is nothing to say. */
export function DayTrust({ turns }: { turns: readonly Turn[] }) {
  const captured = capture(turns);
  const entered = enteredShare(turns);
  const cycles = turns.flatMap((turn) => turn.cycles);
  const learning = cycles.filter(({ isLearning }) => isLearning).length;
  const shared = cycles.filter(({ isShared }) => isShared).length;
  if (!captured && !entered && learning + shared === 0) return null;
  return (
    <section class="settle-trust" aria-label={words.trust}>
      {captured && (
        <p class="number">
          {captured.isPartial && <strong>{words.partial} </strong>}
          {words.capture(captured.tapped, captured.counted, captured.share)}
        </p>
      )}
      {entered && <p class="number">{words.enteredShare(entered.entered, entered.done)}</p>}
      {learning > 0 && <p class="number">{words.learning(learning)}</p>}
      {shared > 0 && <p class="number">{words.shared(shared)}</p>}
    </section>
  );
}
