import { useEffect, useState } from 'preact/hooks';
import type { CellPlan } from '../../domain/cell/cell-plan';
import { CellSimulation } from '../../domain/cell/simulate-cell';
import { simulatedSoFar } from '../../domain/cell/simulated-days';
import { cellWhatIf as says } from '../../i18n/en/cell-what-if';
import { formatNumber } from '../../i18n/format-number';
import { useApp } from '../app';
import type { Runs } from './use-tried-runs';

interface Props {
  readonly plans: { readonly before: CellPlan; readonly after: CellPlan };
  readonly days: number;
  readonly longDays: number;
  readonly seed: number;
  readonly otherLuck: () => void;
  readonly done: (runs: Runs) => void;
}

/** Short enough that the page answers in between, also on a slow tablet. */
const DAYS_AT_ONCE = 20;

/** What the figures are drawn from, and a longer run that shows how far it is and can be stopped. */
export function LongRun({ plans, days, longDays, seed, otherLuck, done }: Props) {
  const { bench } = useApp();
  const [at, setAt] = useState<number | null>(null);
  const [isStopped, setStopped] = useState(false);
  const [pair, setPair] = useState<{ before: CellSimulation; after: CellSimulation } | null>(null);

  // Another plan or another seed: what ran is about something else.
  useEffect(() => setAt(null), [plans, seed]);
  useEffect(() => {
    if (at === null || !pair) return;
    if (at >= longDays || (isStopped && at > 0)) {
      setAt(null);
      done({ before: simulatedSoFar(pair.before), after: simulatedSoFar(pair.after) });
      return;
    }
    return bench.clock.after(0, () => {
      const next = at + DAYS_AT_ONCE;
      pair.before.runUntilDay(next);
      pair.after.runUntilDay(next);
      setAt(next);
    });
  }, [at, pair, isStopped, longDays, bench, done]);

  const begin = () => {
    setPair({ before: new CellSimulation(plans.before, seed), after: new CellSimulation(plans.after, seed) });
    setStopped(false);
    setAt(0);
  };
  return (
    <div class="stack">
      <p class="small quiet">{says.simulated(formatNumber(days), String(seed))}</p>
      <div class="row" aria-live="polite">
        {at === null ? (
          <>
            <button type="button" class="button" onClick={otherLuck}>
              {says.anotherSeed}
            </button>
            <button type="button" class="button" onClick={begin}>
              {says.longRun(formatNumber(longDays))}
            </button>
          </>
        ) : (
          <>
            <progress max={longDays} value={at} aria-label={says.longRun(formatNumber(longDays))} />
            <span class="number">{says.progress(formatNumber(at), formatNumber(longDays))}</span>
            <button type="button" class="button" onClick={() => setStopped(true)}>
              {says.stop}
            </button>
          </>
        )}
      </div>
    </div>
  );
}
