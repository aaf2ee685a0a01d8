import { endTurn } from '../../application/turn/end-turn';
import { ownOfTurn } from '../../domain/turn/own-of-turn';
import { pace } from '../../domain/turn/pace';
import type { Turn } from '../../domain/turn/turn';
import { turnOfPerson } from '../../domain/turn/turn-of-person';
import { endQuestion as words } from '../../i18n/en/end-question';
import { useApp } from '../app';
import { useNow } from '../use-now';
import { HandOver } from './hand-over';
import { OwnDoubts } from './own-doubts';
import { StoppageSheet } from './stoppage-sheet';

interface Props {
  readonly turn: Turn;
  readonly toRework: number;
  close(said?: string): void;
}

/** Asked once, in the place of the figures, away from the button that asked; and what is still open with it. */
export function EndQuestion({ turn, toRework, close }: Props) {
  const { bench, isReadOnly } = useApp();
  return (
    <div class="pace-end-question">
      <section class="stack" aria-label={words.endTitle}>
        <h2>{words.endTitle}</h2>
        <WhatIsLeft turn={turn} toRework={toRework} />
        <div class="pace-end-answers">
          {/* It goes with the panel, so it acts when it is let go: the end of the touch must meet nothing else. */}
          <button
            type="button"
            class="button"
            disabled={isReadOnly}
            onClick={(event) => endTurn(bench, bench.clock.stampOf(event))}
          >
            {words.endYes}
          </button>
          <button type="button" class="button" onClick={() => close()}>
            {words.endNo}
          </button>
        </div>
      </section>
      <HandOver turn={turn} done={close} />
      <div class="pace-end-open">
        <OwnDoubts turn={turn} />
        <StoppageSheet turn={turnOfPerson(turn, turn.person)} isUnsaidOnly />
      </div>
    </div>
  );
}

function WhatIsLeft({ turn, toRework }: Pick<Props, 'turn' | 'toRework'>) {
  const { partElapsedMs } = pace(turn, useNow().value);
  const done = ownOfTurn(turn).cycles.length;
  return (
    <p class="number">
      {words.endText(done, partElapsedMs)} {toRework > 0 && words.toRework(toRework)}
    </p>
  );
}
