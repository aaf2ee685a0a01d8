import type { ChangeEffect } from '../../domain/cell/change-effect';
import { cell as words } from '../../i18n/en/cell';
import { cellWhatIf as says } from '../../i18n/en/cell-what-if';
import { decimalMinutes } from '../../i18n/format-duration';
import { formatNumber } from '../../i18n/format-number';

interface Props {
  readonly isChanged: boolean;
  /** The work is as it was, only lots are not. */
  readonly isLotsOnly: boolean;
  readonly hasMachine: boolean;
  readonly effect: ChangeEffect;
  /** Good parts a day, simulated. */
  readonly moreParts: number;
  /** Mean lead time now and then. */
  readonly leadsMs: readonly [number, number];
}

/** A change of lead time below this share is chance. */
const SEEN = 0.03;

/** What the change does, in words: and where it does nothing, why. */
export function ChangeSentence({ isChanged, isLotsOnly, hasMachine, effect, moreParts, leadsMs }: Props) {
  const { kind, differenceMs, governs, tookOver } = effect;
  const [now, then] = leadsMs;
  const isLead = Math.abs(then / now - 1) > SEEN;
  const noEffect = isLotsOnly ? says.lotsOnly : hasMachine ? says.noEffect[governs] : says.alone;
  return (
    <div class="stack cell-answer cell-held" aria-live="polite">
      <h1>
        {!isChanged
          ? says.begin
          : kind === 'none'
            ? noEffect
            : says[kind](
                words.minutes(decimalMinutes(Math.abs(differenceMs), 3)),
                formatNumber(Math.abs(moreParts)),
              )}
      </h1>
      {isChanged && (tookOver || isLead) && (
        <p>
          {tookOver && says.tookOver[governs]}{' '}
          {isLead &&
            says.leadTime(words.minutes(decimalMinutes(now, 1)), words.minutes(decimalMinutes(then, 1)))}
        </p>
      )}
    </div>
  );
}
