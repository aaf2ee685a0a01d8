import type { CellCycle } from '../../domain/cell/cell-cycle';
import type { CellPlan } from '../../domain/cell/cell-plan';
import type { ChangeEffect } from '../../domain/cell/change-effect';
import { isShown, type RunDifferences } from '../../domain/cell/compare-cells';
import { decimalMinutes } from '../../i18n/decimal-time';
import { cell as words } from '../../i18n/en/cell';
import { cellWhatIf as says } from '../../i18n/en/cell-what-if';
import { formatNumber } from '../../i18n/format-number';
import { withInterval } from './change-figures';
import { leadDigits, shownDifference } from './shown-difference';
import type { ActiveChange } from './tried-change';
import type { Runs } from './use-tried-runs';

interface Props {
  readonly active: readonly ActiveChange[];
  readonly cycles: { readonly before: CellCycle; readonly after: CellCycle };
  readonly effect: ChangeEffect;
  readonly plans: { readonly before: CellPlan; readonly after: CellPlan };
  readonly runs: Runs;
  readonly more: RunDifferences;
}

/** A change of lead time, or of good parts by lots, below this share is none to speak of, shown or not. */
const SPOKEN_OF = { lead: 0.03, good: 0.005 };

/**
 * What the changes do, in words: and where they do nothing, why. Its room is there before anything is said, so that
 * nothing moves away under the finger.
 */
export function ChangeSentence({ active, cycles, effect, plans, runs, more }: Props) {
  const { kind, governs, tookOver } = effect;
  const [now, then] = [runs.before.summary.meanLeadMs, runs.after.summary.meanLeadMs];
  const isLead = isShown(more.lead) && Math.abs(then / now - 1) > SPOKEN_OF.lead;
  const isChanged = active.length > 0;
  const digits = leadDigits(now);
  return (
    <div class="stack cell-answer cell-held" aria-live="polite">
      <h1>{isChanged ? answerOf({ active, cycles, effect, plans, runs, more }) : says.begin}</h1>
      <p class="cell-then">
        {isChanged && tookOver && says.tookOver[kind === 'slower' ? 'slower' : 'faster'][governs]}{' '}
        {isChanged &&
          isLead &&
          says.leadTime(
            words.minutes(decimalMinutes(now, digits)),
            words.minutes(decimalMinutes(then, digits)),
          )}
      </p>
    </div>
  );
}

function answerOf({ active, cycles, effect, plans, runs, more }: Props): string {
  const { kind, governs } = effect;
  const isLotsOnly = active.every(({ isLots }) => isLots);
  const by = shownDifference(runs.before.summary.meanGood, runs.after.summary.meanGood, 1);
  const parts = formatNumber(Math.abs(by), 1);
  if (kind === 'none') {
    if (!isLotsOnly) return cycles.before.hasMachine ? says.noEffect[governs] : says.alone;
    // Places between two people change who waits, and with that the pace.
    const isSpokenOf = isShown(more.perDay) && Math.abs(by) > SPOKEN_OF.good * runs.before.summary.meanGood;
    return isSpokenOf ? says.waiting[by > 0 ? 'faster' : 'slower'](parts) : says.lotsOnly;
  }
  const minutes = Math.abs(shownDifference(cycles.before.partMs / 60_000, cycles.after.partMs / 60_000, 3));
  // What chance alone may have made is said to be that, and never as what the change does.
  if (!isShown(more.perDay)) {
    return says.noneShown[kind](words.minutes(formatNumber(minutes, 3)), withInterval(by, more.perDay));
  }
  const exchange = isLotsOnly ? exchangeOf(plans) : null;
  return exchange
    ? says.exchange[kind](parts, exchange)
    : says[kind](words.minutes(formatNumber(minutes, 3)), parts);
}

/** The occasional work that comes more or less often because the lots are others. */
function exchangeOf({ before, after }: Props['plans']) {
  const now = before.work.occasionals;
  const then = after.work.occasionals.find((own, i) => own.everyParts !== now[i]?.everyParts);
  const other = now.find(({ name }) => name === then?.name);
  return then && other ? { name: then.name, every: then.everyParts, before: other.everyParts } : null;
}
