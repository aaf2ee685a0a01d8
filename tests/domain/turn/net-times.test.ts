import { describe, expect, it } from 'vitest';
import { netTimes } from '../../../src/domain/turn/net-times';
import type { LedgerSpan } from '../../../src/domain/turn/turn';

const span = (category: LedgerSpan['category'], fromMs: number, toMs: number): LedgerSpan => ({
  category,
  reason: '',
  label: '',
  fromMs,
  toMs,
});

describe('netTimes', () => {
  it('shares one span of the ledger among the stretches it reaches over', () => {
    // 0 → 30 in one span, three stretches of 10 each; then 5 stopped and 5 worked.
    const ledger = [span('cycle', 0, 30), span('stoppage', 30, 35), span('cycle', 35, 40)];
    const stretches = [0, 10, 20, 30].map((fromMs) => ({ fromMs, toMs: fromMs + 10 }));
    expect(netTimes(ledger, stretches)).toEqual([10, 10, 10, 5]);
  });

  it('is nought for a stretch without cycle time, or without length', () => {
    const ledger = [span('unaccounted', 0, 10), span('cycle', 10, 20)];
    expect(
      netTimes(ledger, [
        { fromMs: 0, toMs: 10 },
        { fromMs: 10, toMs: 10 },
        { fromMs: 10, toMs: 20 },
      ]),
    ).toEqual([0, 0, 10]);
  });
});
