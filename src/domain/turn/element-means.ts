import { observedMean } from '../../statistics/observed-mean';
import { netTimes } from './net-times';
import type { LedgerSpan, Turn } from './turn';

/** What one element took on average in a turn in which elements were tapped. */
export interface ElementMean {
  readonly element: string;
  /** Parts of which it is known. */
  readonly n: number;
  readonly meanMs: number;
}

/**
 * The mean time of each element that was tapped, stoppages out, milliseconds, in the order of the method. Only parts
 * that count and have every element of their kind tapped: with one tap missed, two elements are one reading.
 */
export function elementMeans({ cycles, ledger }: Pick<Turn, 'cycles' | 'ledger'>): ElementMean[] {
  const taps = Math.max(0, ...cycles.map(({ steps }) => steps.length));
  const times = new Map<string, number[]>();
  for (const { steps, fromMs, isCounted } of cycles) {
    if (!isCounted || steps.length === 0 || steps.length < taps) continue;
    const stretches = steps.map(({ toMs }, place) => ({ fromMs: steps[place - 1]?.toMs ?? fromMs, toMs }));
    const netTimesMs = netTimes(ledger as readonly LedgerSpan[], stretches);
    for (const [place, { element }] of steps.entries()) {
      times.set(element, [...(times.get(element) ?? []), netTimesMs[place]!]);
    }
  }
  return [...times].map(([element, each]) => ({ element, n: each.length, meanMs: observedMean(each) }));
}
