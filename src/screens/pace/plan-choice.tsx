import { useState } from 'preact/hooks';
import { endShift } from '../../application/turn/end-shift';
import { MOST_WANTED, wantParts } from '../../application/turn/want-parts';
import { minuteOfClock } from '../../domain/shop/clock-minute';
import { cleanCycles } from '../../domain/turn/clean-cycles';
import { goodSoFar } from '../../domain/turn/good-so-far';
import { LAST, paceRatio } from '../../domain/turn/pace-ratio';
import { isTooEarly } from '../../domain/turn/project-finish';
import type { Turn } from '../../domain/turn/turn';
import { outlook as words } from '../../i18n/en/outlook';
import { parseWhole } from '../../i18n/parse-number';
import { useApp } from '../app';
import { ClockField } from '../clock-field';
import { plannedTime } from './time-of-day';
import { useProjection } from './use-projection';

/** How many good parts are wanted in the turn, until when it goes, and how its finish is reckoned. */
export function PlanChoice({ turn, done }: { turn: Turn; done(): void }) {
  const { bench, isReadOnly } = useApp();
  const [typed, setTyped] = useState(turn.wantedParts === null ? '' : String(turn.wantedParts));
  const { endsAtMs } = turn.planned;
  const endsAt = endsAtMs === null ? '' : plannedTime(turn, endsAtMs);
  const [until, setUntil] = useState(endsAt);
  const [isFaulty, setFaulty] = useState(false);
  const found = useProjection(turn);
  const clean = cleanCycles(turn);
  const ratio = turn.isLearning ? null : paceRatio(clean);
  const source = turn.inHand.targetSource;
  const set = (event: Event) => {
    event.preventDefault();
    const parts = parseWhole(typed) ?? 0;
    const isNumber = parts >= 1 && parts <= MOST_WANTED;
    const isNewEnd = until !== '' && until !== endsAt;
    // A field that stays empty says nothing; one that cannot be read is asked about.
    const minute = minuteOfClock(until);
    if ((!isNumber && (typed.trim() !== '' || !isNewEnd)) || (isNewEnd && minute === null)) {
      return setFaulty(true);
    }
    if (isNumber) wantParts(bench, parts);
    if (isNewEnd && minute !== null) endShift(bench, minute);
    done();
  };
  return (
    <form class="pace-plan-choice" onSubmit={set} noValidate>
      <div class="stack">
        <h2>{words.planTitle}</h2>
        <div class="row pace-plan-row">
          <label class="field">
            <span>{words.wanted}</span>
            <input
              value={typed}
              inputMode="numeric"
              autocomplete="off"
              maxLength={6}
              disabled={isReadOnly}
              aria-describedby="pace-plan-fault"
              onInput={(event) => {
                setTyped(event.currentTarget.value);
                setFaulty(false);
              }}
            />
          </label>
          <ClockField
            class="pace-plan-until"
            label={words.until}
            value={until}
            disabled={isReadOnly}
            change={(next) => {
              setUntil(next);
              setFaulty(false);
            }}
          />
          <button type="submit" class="button" disabled={isReadOnly}>
            {words.set}
          </button>
          <button
            type="button"
            class="button"
            disabled={isReadOnly || turn.wantedParts === null}
            onClick={() => {
              wantParts(bench, null);
              done();
            }}
          >
            {words.none}
          </button>
        </div>
        <p id="pace-plan-fault" class={isFaulty ? 'fault' : 'quiet number'} role="status">
          {isFaulty ? words.fault : words.soFar(goodSoFar(turn))}
        </p>
      </div>
      <div class="stack">
        <h3>{words.howTitle}</h3>
        {source && <p>{words.target(words.sources[source])}</p>}
        {ratio !== null && <p class="number">{words.paceRatio(Math.min(LAST, clean.length), ratio)}</p>}
        <p class="number">
          {found ? words.howRange(found.from.parts, found.from.turns) : isTooEarly(turn) && words.notYet}
        </p>
        {found && found.undisturbedByEnd !== null && (
          <p class="number">{words.undisturbed(found.undisturbedByEnd)}</p>
        )}
        {!turn.isLearning && <p>{words.state}</p>}
        {!turn.isLearning && turn.inHand.targetMs !== null && <p>{words.picture}</p>}
        <p>{words.scrap}</p>
        <p>{words.plan}</p>
      </div>
    </form>
  );
}
