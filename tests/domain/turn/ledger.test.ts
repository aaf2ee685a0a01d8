import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { LogRecord } from '../../../src/domain/records/log-record';
import type { TurnFact } from '../../../src/domain/records/turn-fact';
import { foldTurn } from '../../../src/domain/turn/fold-turn';
import { ledgerTotals } from '../../../src/domain/turn/ledger-totals';
import { recordAt, stampAt } from '../../support/records';
import {
  beforeChange,
  change,
  changeAsked,
  done,
  ended,
  explained,
  judged,
  partL,
  partN,
  resumed,
  stopped,
  turnRecords,
  undone,
} from './turn-script';

/** Any tap at all, also ones no screen would offer. Numbers name a tap that may or may not be of the kind. */
const number = fc.integer({ min: 10, max: 40 });
const anyFact: fc.Arbitrary<TurnFact> = fc.oneof(
  fc.constantFrom(done(), done(partL), stopped, resumed, change(partL), change(partN)),
  fc.constantFrom(changeAsked(partL), changeAsked(partN)),
  fc
    .tuple(number, fc.constantFrom('set-up' as const, 'next-part' as const, 'part-before' as const))
    .map(([of, as]) => beforeChange(of, as)),
  number.map(undone),
  number.map((of) => judged(of, 'scrap')),
  number.map((of) => explained(of, 'break', 'planned-break')),
  number.map((of) => explained(of, 'called-away', 'called-away')),
  fc.integer({ min: 2_000, max: 900_000 }).map((sleptMs): TurnFact => ({ kind: 'slept', sleptMs })),
  fc.integer({ min: -3_600_000, max: 3_600_000 }).map((byMs): TurnFact => ({ kind: 'clock-set', byMs })),
);

interface Step {
  readonly fact: TurnFact;
  readonly afterMs: number;
  readonly reload: boolean;
}

const anyStep: fc.Arbitrary<Step> = fc.record({
  fact: anyFact,
  afterMs: fc.integer({ min: 0, max: 400_000 }),
  reload: fc.boolean(),
});

/** The records of the steps, and how long they took: every wait, and every sleep, and no step of a clock. */
function play(steps: readonly Step[]): { records: LogRecord[]; elapsedMs: number } {
  const records = turnRecords([]);
  let { run, monoMs, wallMs } = records[0]!.stamp;
  let elapsedMs = 0;
  steps.forEach(({ fact, afterMs, reload }, place) => {
    const sleptMs = fact.kind === 'slept' ? fact.sleptMs : 0;
    const byMs = 'byMs' in fact ? fact.byMs : 0;
    if (reload) run = `run-${place + 2}`;
    monoMs = reload ? 0 : monoMs + afterMs;
    wallMs += afterMs + sleptMs + byMs;
    elapsedMs += afterMs + sleptMs;
    const stamp = stampAt(0, { run, monoMs, wallMs });
    // No screen offers to take the end back, so its number is one that no random undo names.
    const sequence = fact.kind === 'turn-ended' ? 99 : 11 + place;
    records.push(recordAt(sequence, 0, 't:10', fact, { stamp }));
  });
  return { records, elapsedMs };
}

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);

describe('the ledger of a turn', () => {
  it('adds up to the elapsed time, to the millisecond, whatever is tapped', () => {
    fc.assert(
      fc.property(fc.array(anyStep, { maxLength: 30 }), (steps) => {
        const { records, elapsedMs } = play(steps);
        const turn = foldTurn(records);
        expect(turn.lastAtMs).toBe(elapsedMs);
        expect(sum(Object.values(ledgerTotals(turn.ledger)))).toBe(elapsedMs);
      }),
      { numRuns: 1_000 },
    );
  });

  it('has no gap and no overlap, and is in order', () => {
    fc.assert(
      fc.property(fc.array(anyStep, { maxLength: 30 }), (steps) => {
        const { ledger, lastAtMs } = foldTurn(play(steps).records);
        const ends = ledger.map(({ toMs }) => toMs);
        expect(ledger.map(({ fromMs }) => fromMs)).toEqual(ends.length > 0 ? [0, ...ends.slice(0, -1)] : []);
        expect(ends.at(-1) ?? 0).toBe(lastAtMs);
      }),
      { numRuns: 500 },
    );
  });

  it('stops growing where the turn ended', () => {
    fc.assert(
      fc.property(
        fc.array(anyStep, { maxLength: 15 }),
        fc.array(anyStep, { maxLength: 15 }),
        (before, after) => {
          const end: Step = { fact: ended, afterMs: 10_000, reload: false };
          const short = play([...before, end]);
          // An undo after the end could still name a tap before it; no screen writes one.
          const isNoUndo = ({ fact }: Step) => fact.kind !== 'undone';
          const long = play([...before, end, ...after.filter(isNoUndo)]);
          const turn = foldTurn(long.records);
          expect(turn.lastAtMs).toBe(short.elapsedMs);
          expect(sum(Object.values(ledgerTotals(turn.ledger)))).toBe(short.elapsedMs);
        },
      ),
      { numRuns: 500 },
    );
  });

  it('leaves the time of cycles equal to the net times of the parts done, once the turn has ended', () => {
    fc.assert(
      fc.property(fc.array(anyStep, { maxLength: 30 }), (steps) => {
        const turn = foldTurn(play([...steps, { fact: ended, afterMs: 5_000, reload: false }]).records);
        expect(ledgerTotals(turn.ledger).cycle).toBe(sum(turn.cycles.map(({ netMs }) => netMs)));
      }),
      { numRuns: 500 },
    );
  });

  it('is the same again, with the whole turn, when the last tap is taken back', () => {
    fc.assert(
      fc.property(
        fc.array(anyStep, { maxLength: 20 }),
        fc.constantFrom(done(), stopped, resumed, change(partL)),
        (steps, tap) => {
          const { records } = play(steps);
          const last = records.at(-1)!;
          const stamp = {
            ...last.stamp,
            monoMs: last.stamp.monoMs + 1_000,
            wallMs: last.stamp.wallMs + 1_000,
          };
          const key = last.sequence + 1;
          const again = [
            ...records,
            recordAt(key, 0, 't:10', tap, { stamp: last.stamp }),
            recordAt(key + 1, 0, 't:10', undone(key), { stamp }),
          ];
          // The same second passed, with nothing tapped in it: a clock that was set by nothing, twice, so that the
          // tablet was seen at the same two moments.
          const seen = { kind: 'clock-set', byMs: 0 } as const;
          const untouched = [
            ...records,
            recordAt(key, 0, 't:10', seen, { stamp: last.stamp }),
            recordAt(key + 1, 0, 't:10', seen, { stamp }),
          ];
          const { lastByHandAt: _, ...taken } = foldTurn(again);
          expect(foldTurn(untouched)).toMatchObject(taken);
          expect(taken.cycles).toEqual(foldTurn(records).cycles);
        },
      ),
      { numRuns: 500 },
    );
  });
});
