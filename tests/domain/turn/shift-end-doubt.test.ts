import { describe, expect, it } from 'vitest';
import type { TurnFact } from '../../../src/domain/records/turn-fact';
import { foldTurn } from '../../../src/domain/turn/fold-turn';
import { MORNING_MS } from '../../support/records';
import { done, type Line, turnRecords } from './turn-script';

/** The shift ends at second 3,600. */
const planned: Line = [0, { kind: 'shift-planned', breaks: [], endsWallMs: MORNING_MS + 3_600_000 }];
const takesOver = (at: number): Line => [at, { kind: 'person-changed', person: 'M2' }];
/** Parts that end at second 3,500, 3,650 and 3,750: t:12, t:13, t:14 where nothing is said before. */
const around: Line[] = [3_500, 3_650, 3_750].map((at) => [at, done()]);
const asked = (...lines: Line[]) =>
  foldTurn(turnRecords([planned, ...lines].sort((a, b) => a[0] - b[0]))).doubts.map(({ kind, key, toMs }) => [
    kind,
    key,
    toMs / 1_000,
  ]);

describe('a turn that goes on after its shift', () => {
  it('asks once who is there, with the first part that was begun after the end', () => {
    expect(asked(...around)).toEqual([['same-person', 't:14', 3_600]]);
    expect(asked(...around, [3_850, done()])).toHaveLength(1);
  });

  it('asks nothing while the part is finished that the end fell into, and nothing without a calendar', () => {
    expect(asked(...around.slice(0, 2))).toEqual([]);
    expect(foldTurn(turnRecords(around)).doubts).toEqual([]);
  });

  it('asks nothing where somebody took over about then, and asks where that was long before', () => {
    expect(asked(takesOver(3_000), ...around)).toEqual([]);
    expect(asked(...around, takesOver(4_400))).toEqual([]);
    expect(asked(takesOver(2_600), ...around)).toHaveLength(1);
  });

  it('is answered by a yes, by another person from then on, and by one for the whole turn', () => {
    const yes: TurnFact = { kind: 'person-confirmed', gap: 't:14' };
    expect(asked(...around, [4_000, yes])).toEqual([]);
    const say = { by: 'F1', why: 'told' };
    const other: TurnFact = { kind: 'person-corrected', person: 'M2', fromMs: 3_600_000, ...say };
    expect(asked(...around, [4_000, other])).toEqual([]);
    const turn = foldTurn(turnRecords([planned, ...around, [4_000, other]]));
    expect(turn.cycles.map(({ person, isShared }) => [person, isShared])).toEqual([
      ['K7', false],
      ['M2', true],
      ['M2', false],
    ]);
    expect(asked(...around, [4_000, { kind: 'person-corrected', person: 'M2', ...say }])).toEqual([]);
  });
});
