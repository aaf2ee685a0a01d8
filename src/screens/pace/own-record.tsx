import './own-record.css';
import { localDay } from '../../domain/day/local-day';
import { pace } from '../../domain/turn/pace';
import type { Turn } from '../../domain/turn/turn';
import { ownRecord as own } from '../../i18n/en/own-record';
import { pace as words } from '../../i18n/en/pace';
import { formatDay } from '../../i18n/format-day';
import { useApp } from '../app';
import { PutRight } from '../settle/put-right';
import { ElementSheet } from './element-sheet';
import { LedgerSheet } from './ledger-sheet';
import { OwnDoubts } from './own-doubts';
import { OwnNote } from './own-note';
import { OwnParts } from './own-parts';
import { PositionText } from './position-text';
import { StoppageSheet } from './stoppage-sheet';
import { TakeOwnDays } from './take-own-days';
import { timeOfDay } from './time-of-day';

/** What the operator sees before anyone else: the turn's parts, where its time went, and its stoppages. */
export function OwnRecord({ turn }: { turn: Turn }) {
  const { bench } = useApp();
  const { people, startedAt, lastStamp } = turn;
  const codes = [...new Set(people.map(({ person }) => person))].join(', ');
  const day = localDay(startedAt);
  const lastDay = localDay(lastStamp);
  const endedAt = lastDay === day ? timeOfDay(lastStamp) : `${formatDay(lastDay)}, ${timeOfDay(lastStamp)}`;
  const { aheadMs, planAheadMs } = pace(turn, lastStamp);
  return (
    <div class="page stack pace-own">
      <header class="row spread">
        <div>
          <h1>{own.ownTitle}</h1>
          <p class="number">{own.ownWhen(codes, formatDay(day), timeOfDay(startedAt), endedAt)}</p>
        </div>
        <button type="button" class="button strong pace-another" onClick={() => bench.putAwayTurn()}>
          {own.startAnother}
        </button>
      </header>
      <p class="quiet">{own.ownNote}</p>
      {aheadMs !== null && planAheadMs !== null && (
        <p class="row pace-own-position">
          <span>
            {words.paceLabel}: <PositionText ms={aheadMs} class="" />
          </span>
          <span>
            {words.planLabel}: <PositionText ms={planAheadMs} class="" />
          </span>
        </p>
      )}
      <OwnDoubts turn={turn} />
      <div class="pace-own-sheets">
        <OwnParts turn={turn} />
        <LedgerSheet turn={turn} />
        <StoppageSheet turn={turn} />
        <ElementSheet turn={turn} />
        <OwnNote key={turn.id} turn={turn} />
        <TakeOwnDays turn={turn} />
      </div>
      <PutRight turns={[turn]} isAtStation />
    </div>
  );
}
