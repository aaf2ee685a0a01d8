import type { CellCycle, Governor } from './cell-cycle';

/** What a change does to the time a part. */
export interface ChangeEffect {
  /** Milliseconds a part; negative is faster. */
  readonly differenceMs: number;
  readonly kind: 'faster' | 'slower' | 'none';
  /** Who governs after it: where nothing changed, the reason; where another than before, who took over. */
  readonly governs: Governor;
  readonly tookOver: boolean;
}

/** Less than this share of the time a part is no effect: no shop could measure it. */
const NO_EFFECT = 0.0005;

export function changeEffect(before: CellCycle, after: CellCycle): ChangeEffect {
  const differenceMs = after.partMs - before.partMs;
  const isNone = Math.abs(differenceMs) < NO_EFFECT * before.partMs;
  return {
    differenceMs,
    kind: isNone ? 'none' : differenceMs < 0 ? 'faster' : 'slower',
    governs: after.governs,
    tookOver: after.governs !== before.governs,
  };
}
