import { readTargetTime } from '../../domain/shop/read-target-time';
import { decimalMinutes } from '../../i18n/decimal-time';
import { shop } from '../../i18n/en/shop';
import { roundedClockFace } from '../../i18n/rounded-clock-face';
import { shownTarget } from './shown-target';

const words = shop.form;

interface Props {
  readonly typed: string;
  /** The target as it stands; null without one. */
  readonly standingMs: number | null;
  readonly change: (typed: string) => void;
}

/** A target as it is typed, with what was understood under it while it is being typed. */
export function TargetField({ typed, standingMs, change }: Props) {
  return (
    <div class="stack shop-target">
      <label class="field">
        <span>{words.target}</span>
        <input
          value={typed}
          inputMode="text"
          autocomplete="off"
          aria-describedby="shop-target-hint"
          onInput={(event) => change(event.currentTarget.value)}
        />
      </label>
      <p class="number" role="status">
        <Understood typed={typed} standingMs={standingMs} />
      </p>
      <p class="small quiet" id="shop-target-hint">
        {words.targetHint}
      </p>
    </div>
  );
}

/** Nothing is complained of while somebody types: what is not a time yet is not understood yet. */
function Understood({ typed, standingMs }: Pick<Props, 'typed' | 'standingMs'>) {
  const read = readTargetTime(typed);
  if (!read.ok) return <>{read.fault === 'empty' ? words.noTarget : ''}</>;
  const isStanding = standingMs !== null && typed.trim() === shownTarget(standingMs);
  const targetMs = isStanding ? standingMs : read.targetMs;
  return (
    <>
      <strong class="shop-equals">{words.equals(roundedClockFace(targetMs))}</strong>{' '}
      {words.minutes(decimalMinutes(targetMs, 3))}
    </>
  );
}
