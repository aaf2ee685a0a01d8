import { undoLastTap } from '../../application/turn/undo-last-tap';
import type { Turn } from '../../domain/turn/turn';
import { turnNow } from '../../domain/turn/turn-now';
import { pace as words } from '../../i18n/en/pace';
import { turnQuestion as asks } from '../../i18n/en/turn-question';
import { useApp } from '../app';
import { undoText } from './undo-text';

/** The last tap lies back a while: taking it back is a correction, so it is asked. */
export function UndoChoice({ turn, done }: { turn: Turn; done(said?: string): void }) {
  const { bench, isReadOnly } = useApp();
  const what = undoText(turn);
  const takeBack = () => {
    undoLastTap(bench);
    done(words.takenBack(what));
  };
  return (
    <section class="stack" aria-label={asks.undoYes}>
      <h2>{asks.undoTitle(what, turnNow(turn, bench.clock.now()) - (turn.undoable?.atMs ?? 0))}</h2>
      <div class="pace-end-answers">
        <button type="button" class="button" disabled={isReadOnly || !what} onClick={takeBack}>
          {asks.undoYes}
        </button>
        <button type="button" class="button" onClick={() => done()}>
          {asks.undoNo}
        </button>
      </div>
      <p class="quiet small">{asks.undoNote}</p>
    </section>
  );
}
