import { readTargetTime } from '../../domain/shop/read-target-time';
import { shop } from '../../i18n/en/shop';
import { decimalMinutes } from '../../i18n/format-duration';
import { roundedClockFace } from '../../i18n/rounded-clock-face';

const words = shop.form;

/** A target as it is typed, with what was understood under it while it is being typed. */
export function TargetField({ typed, change }: { typed: string; change: (typed: string) => void }) {
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
        {understood(typed)}
      </p>
      <p class="small quiet" id="shop-target-hint">
        {words.targetHint}
      </p>
    </div>
  );
}

/** Nothing is complained of while somebody types: what is not a time yet is not understood yet. */
function understood(typed: string): string {
  const read = readTargetTime(typed);
  if (read.ok) return words.understood(roundedClockFace(read.targetMs), decimalMinutes(read.targetMs, 3));
  return read.fault === 'empty' ? words.noTarget : '';
}
