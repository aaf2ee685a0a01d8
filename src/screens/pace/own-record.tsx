import './own-record.css';
import { useState } from 'preact/hooks';
import { localDay } from '../../domain/day/local-day';
import { pace } from '../../domain/turn/pace';
import type { Turn } from '../../domain/turn/turn';
import { turnOfPerson } from '../../domain/turn/turn-of-person';
import { ownRecord as own } from '../../i18n/en/own-record';
import { pace as words } from '../../i18n/en/pace';
import { formatDay } from '../../i18n/format-day';
import { useApp } from '../app';
import { MoreBelow } from '../more-below';
import { PutRight } from '../settle/put-right';
import { ElementSheet } from './element-sheet';
import { LedgerSheet } from './ledger-sheet';
import { OwnDoubts } from './own-doubts';
import { OwnNote } from './own-note';
import { OwnParts } from './own-parts';
import { OwnWhose } from './own-whose';
import { PositionText } from './position-text';
import { StoppageSheet } from './stoppage-sheet';
import { TakeOwnDays } from './take-own-days';
import { timeOfDay } from './time-of-day';

/** What the operator sees before anyone else: the turn's parts, where its time went, and its stoppages. */
export function OwnRecord({ turn }: { turn: Turn }) {
  const { bench } = useApp();
  const { startedAt, lastStamp } = turn;
  const people = [...new Set(turn.people.map(({ person }) => person))];
  const [person, setPerson] = useState(turn.person);
  const ofPerson = turnOfPerson(turn, person);
  const day = localDay(startedAt);
  const lastDay = localDay(lastStamp);
  const endedAt = lastDay === day ? timeOfDay(lastStamp) : `${formatDay(lastDay)}, ${timeOfDay(lastStamp)}`;
  const { aheadMs, planAheadMs } = pace(ofPerson, lastStamp);
  const isMeasured = ofPerson.cycles.some(({ isCounted, targetMs }) => isCounted && targetMs !== null);
  return (
    <div class="page stack pace-own">
      <header class="row spread">
        <div>
          <h1>{own.ownTitle}</h1>
          <p class="number">
            {own.ownWhen(people.join(', '), formatDay(day), timeOfDay(startedAt), endedAt)}
          </p>
        </div>
        <button type="button" class="button strong pace-another" onClick={() => bench.putAwayTurn()}>
          {own.startAnother}
        </button>
      </header>
      <p class="quiet">{own.ownNote}</p>
      {people.length > 1 && <OwnWhose people={people} person={person} choose={setPerson} />}
      {isMeasured && aheadMs !== null && planAheadMs !== null && (
        <p class="row pace-own-position">
          <span>
            {own.paceLabel}: <PositionText ms={aheadMs} class="" />
          </span>
          <span>
            {words.planLabel}: <PositionText ms={planAheadMs} class="" />
          </span>
        </p>
      )}
      <OwnDoubts turn={turn} />
      <div class="pace-own-sheets">
        <OwnParts turn={turn} person={person} />
        <LedgerSheet turn={ofPerson} />
        <StoppageSheet turn={ofPerson} />
        <ElementSheet turn={ofPerson} />
        <OwnNote key={turn.id} turn={turn} />
        <TakeOwnDays person={person} />
      </div>
      <PutRight turns={[turn]} isAtStation />
      <MoreBelow />
    </div>
  );
}
