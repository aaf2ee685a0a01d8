import { endTurn } from '../../application/turn/end-turn';
import { localDay } from '../../domain/day/local-day';
import type { Turn } from '../../domain/turn/turn';
import { leftOpen as words } from '../../i18n/en/left-open';
import { formatDay } from '../../i18n/format-day';
import { useApp } from '../app';
import { timeOfDay } from './time-of-day';

/** A turn that nobody touched since an earlier day: it is asked about, never assumed. */
export function LeftOpen({ turn, goOn }: { turn: Turn; goOn(): void }) {
  const { bench, isReadOnly } = useApp();
  const { person, lastByHandAt } = turn;
  return (
    <div class="page stack pace-left">
      <h1>{words.leftTitle(person, formatDay(localDay(lastByHandAt)), timeOfDay(lastByHandAt))}</h1>
      <p>{words.leftText}</p>
      <div class="pace-left-answers">
        <button type="button" class="button" onClick={goOn}>
          {words.leftGoOn}
        </button>
        <button
          type="button"
          class="button"
          disabled={isReadOnly}
          onClick={(event) => endTurn(bench, bench.clock.stampOf(event))}
        >
          {words.leftEnd}
        </button>
      </div>
      <p class="quiet">{words.leftNote}</p>
    </div>
  );
}
