import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { TurnFact } from '../../../src/domain/records/turn-fact';
import { foldTurn } from '../../../src/domain/turn/fold-turn';
import { ledgerTotals } from '../../../src/domain/turn/ledger-totals';
import { ended, explained, partM, resumed, stopped, turnRecords } from './turn-script';

const doneAfter = (touchMs: number): TurnFact => ({ kind: 'part-done', ...partM, touchMs });

/** Two parts of a rack that were cleaned, bored and inspected in passes: the taps come at the last pass. */
const rack = (first: number, second: number) =>
  turnRecords([
    [100, stopped],
    [130, resumed],
    [130, explained(11, 'material', 'stoppage')],
    [900, doneAfter(first)],
    [930, doneAfter(second)],
    [990, ended],
  ]);

describe('a part that was timed otherwise than from tap to tap', () => {
  it('takes the time that was timed, not the time since the tap before', () => {
    // Given with the taps: 128 s and 131 s. The taps themselves lie 900 s and 30 s apart.
    const { cycles } = foldTurn(rack(128_000, 131_000));
    expect(cycles.map(({ netMs }) => netMs)).toEqual([128_000, 131_000]);
    expect(cycles.map(({ fromMs, toMs }) => toMs - fromMs)).toEqual([900_000, 30_000]);
  });

  it('may have taken no time at all', () => {
    expect(foldTurn(rack(0, 131_000)).cycles[0]?.netMs).toBe(0);
  });

  it('leaves every millisecond of the turn where it was', () => {
    // 990 s: 30 s stopped, 60 s after the last tap, the rest between taps.
    const expected = { cycle: 900_000, stoppage: 30_000, unaccounted: 60_000 };
    fc.assert(
      fc.property(fc.nat(2_000_000), fc.nat(2_000_000), (first, second) => {
        const { ledger } = foldTurn(rack(first, second));
        expect(ledgerTotals(ledger)).toMatchObject(expected);
      }),
      { numRuns: 50 },
    );
  });
});
