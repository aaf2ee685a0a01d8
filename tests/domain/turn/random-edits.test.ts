import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { partsOfDay } from '../../../src/domain/day/part-of-day';
import type { LogRecord } from '../../../src/domain/records/log-record';
import { recordLine } from '../../../src/domain/records/record-line';
import type { TurnFact } from '../../../src/domain/records/turn-fact';
import { foldTurn } from '../../../src/domain/turn/fold-turn';
import { ledgerTotals } from '../../../src/domain/turn/ledger-totals';
import { ownOfTurn } from '../../../src/domain/turn/own-of-turn';
import type { Cycle } from '../../../src/domain/turn/turn';
import { recordAt, stampAt } from '../../support/records';
import {
  change,
  changeAsked,
  done,
  ended,
  explained,
  judged,
  partL,
  partM,
  resumed,
  stopped,
  undone,
} from './turn-script';

const EDITS = 1_000;

/**
 * A day's turn of 300 taps with bounces, missed taps, stoppages, sleeps, reloads, planned breaks, two people and parts
 * made in pairs; its number 10 + place.
 */
function day(): LogRecord[] {
  const records: LogRecord[] = [
    recordAt(10, 0, 't:10', { kind: 'turn-started', starts: 'turn', person: 'K7', ...partM }),
  ];
  let { run, monoMs, wallMs } = records[0]!.stamp;
  const pass = (ms: number) => {
    monoMs += ms;
    wallMs += ms;
  };
  const write = (fact: TurnFact) =>
    records.push(
      recordAt(10 + records.length, 0, 't:10', fact, { stamp: stampAt(0, { run, monoMs, wallMs }) }),
    );
  const breakAt = (hour: number) => ({
    fromWallMs: wallMs + hour * 3_600_000,
    toWallMs: wallMs + hour * 3_600_000 + 900_000,
  });
  const breaks = [breakAt(2), breakAt(5)];
  write({ kind: 'shift-planned', breaks, endsWallMs: null });
  for (let place = 1; place <= 300; place += 1) {
    // A break is taken and nobody taps.
    const isBreak = breaks.some(({ fromWallMs }) => wallMs > fromWallMs - 90_000 && wallMs <= fromWallMs);
    if (isBreak) pass(900_000);
    if (place === 150) write({ kind: 'person-changed', person: 'M2' });
    pass(place % 23 === 0 ? 170_000 : 78_000 + ((place * 7_919) % 9_000));
    if (place % 17 === 0) {
      write(stopped);
      pass(45_000);
      write(resumed);
      pass(20_000);
    }
    if (place % 41 === 0) {
      wallMs += 700_000;
      write({ kind: 'slept', sleptMs: 700_000 });
    }
    if (place % 97 === 0) {
      run = `run-${place}`;
      monoMs = 40;
      wallMs += 60_000;
      write({ kind: 'page-opened' });
    }
    // Older records ask nothing about the time before a change.
    if (place % 60 === 0) write((place > 150 ? change : changeAsked)(place % 120 === 0 ? partM : partL));
    write(done(place % 120 < 60 ? (place % 5 === 0 ? pairOfM : partM) : partL));
    if (place % 13 === 0) {
      pass(400);
      write(done(place % 120 < 60 ? partM : partL));
    }
  }
  pass(30_000);
  write(ended);
  return records;
}

const pairOfM = { ...partM, partsPerTap: 2 };
const number = fc.integer({ min: 10, max: 400 });
const key = number.map((of) => `t:${of}`);
const by = fc.constantFrom('F1', 'E2');
const stoppedTime = fc.constantFrom(
  { category: 'planned-break', reason: 'break', label: '' } as const,
  { category: 'called-away', reason: 'called-away', label: '' } as const,
);
const place = fc.integer({ min: 0, max: 32_000_000 });
/** Anything a person may say about the day afterwards, also about taps that are no such thing. */
const anyEdit: fc.Arbitrary<TurnFact> = fc.oneof(
  fc
    .tuple(key, fc.oneof(fc.constant('work' as const), stoppedTime))
    .map(([gap, as]): TurnFact => ({ kind: 'gap-explained', gap, as })),
  fc
    .tuple(key, fc.constantFrom('set-up' as const, 'next-part' as const, 'part-before' as const))
    .map(([of, as]): TurnFact => ({ kind: 'change-explained', change: of, as })),
  key.map((tap): TurnFact => ({ kind: 'tap-counted', tap })),
  key.map((tap): TurnFact => ({ kind: 'tap-left-out', tap })),
  fc
    .tuple(key, fc.constantFrom('one-part' as const, 'two-parts' as const, 'interrupted' as const))
    .map(([partDone, as]): TurnFact => ({ kind: 'cycle-judged', partDone, as })),
  fc
    .tuple(fc.array(key, { maxLength: 9 }), fc.constantFrom(partM, partL, pairOfM), by)
    .map(
      ([partDone, part, who]): TurnFact => ({ kind: 'part-recoded', partDone, ...part, by: who, why: 'x' }),
    ),
  fc.tuple(place, place, fc.constantFrom('cycle' as const, 'set-up' as const, 'rework' as const), by).map(
    ([fromMs, toMs, category, who]): TurnFact => ({
      kind: 'time-reclassified',
      fromMs,
      toMs,
      category,
      reason: '',
      label: '',
      by: who,
      why: 'x',
    }),
  ),
  fc
    .tuple(key, by)
    .map(([partDone, who]): TurnFact => ({ kind: 'part-set-aside', partDone, cause: 'x', by: who })),
  fc.tuple(key, by).map(([partDone, who]): TurnFact => ({ kind: 'part-taken-back', partDone, by: who })),
  fc.tuple(fc.option(place), fc.constantFrom('M2', 'R4'), by).map(
    ([fromMs, person, who]): TurnFact => ({
      kind: 'person-corrected',
      person,
      ...(fromMs === null ? {} : { fromMs, toMs: fromMs + 3_600_000 }),
      by: who,
      why: 'x',
    }),
  ),
  fc.tuple(key, place, fc.constantFrom('break' as const, 'work' as const)).map(
    ([partDone, fromMs, as]): TurnFact => ({
      kind: 'break-answered',
      partDone,
      fromMs,
      toMs: fromMs + 900_000,
      as,
    }),
  ),
  fc.nat(30).map((parts): TurnFact => ({ kind: 'learning-noted', person: 'M2', parts })),
  fc.nat(400).map((count): TurnFact => ({ kind: 'parts-counted', count })),
  fc.tuple(number, key).map(
    ([of, ofPart]): TurnFact => ({
      ...(explained(of, 'rework', 'called-away') as Extract<TurnFact, { kind: 'stoppage-explained' }>),
      category: 'rework',
      ofPart,
    }),
  ),
  key.map((gap): TurnFact => ({ kind: 'person-confirmed', gap })),
  key.map((partDone): TurnFact => ({ kind: 'part-confirmed', partDone })),
  number.map((of) => judged(of, 'scrap')),
  number.map((of) => explained(of, 'set-up', 'set-up')),
);

/** Taps of which somebody said last that they were interrupted. */
function saidInterrupted(records: readonly LogRecord[]): ReadonlySet<string> {
  const said = new Map<string, string>();
  for (const { fact } of records) if (fact.kind === 'cycle-judged') said.set(fact.partDone, fact.as);
  return new Set([...said].filter(([, as]) => as === 'interrupted').map(([partDone]) => partDone));
}

/** What stops leave of a part, below a second and a half, is no time of one, unless somebody called the tap a part. */
function isRemainder(records: readonly LogRecord[], { key, netMs }: Cycle): boolean {
  const tap = key.split('/')[0]!;
  const isSaid = records.some(({ fact }) => fact.kind === 'tap-counted' && fact.tap === tap);
  return netMs < (isSaid ? 1 : 1_500);
}

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);

describe(`${EDITS} random edits of a day`, () => {
  const edits = fc.sample(anyEdit, { numRuns: EDITS, seed: 20260302 });

  it('never change the sum of the ledger, its order, or a record that was there', () => {
    const records = day();
    const before = records.map(recordLine).join('\n');
    const { lastAtMs } = foldTurn(records);
    // 300 parts in 78 to 87 s or 170 s, 17 stoppages, 7 sleeps, 3 reloads: somewhat more than eight hours.
    expect(lastAtMs).toBeGreaterThan(8 * 3_600_000);
    const all = [...records];
    for (const edit of edits) {
      all.push(recordAt(10 + all.length, 40_000_000 + all.length, 't:10', edit));
      const turn = foldTurn(all);
      const ends = turn.ledger.map(({ toMs }) => toMs);
      expect(turn.ledger.map(({ fromMs }) => fromMs)).toEqual([0, ...ends.slice(0, -1)]);
      expect(Math.abs(sum(Object.values(ledgerTotals(turn.ledger))) - lastAtMs)).toBeLessThanOrEqual(1);
      expect(turn.lastAtMs).toBe(lastAtMs);
    }
    expect(all.slice(0, records.length).map(recordLine).join('\n')).toBe(before);
  });

  it('leave every part about which a question is open out of every mean, and nothing else that nobody took out', () => {
    const all = [...day()];
    const asking = new Set<string>();
    for (const edit of edits) {
      all.push(recordAt(10 + all.length, 40_000_000 + all.length, 't:10', edit));
      if (all.length % 10 > 0) continue;
      const { cycles, doubts, people } = foldTurn(all);
      const open = doubts.filter(({ kind }) => kind !== 'second-tap' && kind !== 'same-person');
      for (const { kind } of open) asking.add(kind);
      const isAsked = (cycle: Cycle) =>
        open.some((doubt) =>
          doubt.kind === 'another-part'
            ? doubt.suggestion.partsDone.includes(cycle.key)
            : doubt.kind !== 'before-change' && doubt.fromMs < cycle.toMs && doubt.toMs > cycle.fromMs,
        );
      const isTakenOut = (cycle: Cycle) =>
        isRemainder(all, cycle) ||
        cycle.setAside !== '' ||
        cycle.isLearning ||
        saidInterrupted(all).has(cycle.key.split('/')[0]!);
      const expected = cycles.filter((cycle) => !isAsked(cycle) && !isTakenOut(cycle));
      expect(cycles.filter(({ isCounted }) => isCounted)).toEqual(expected);
      const inMeans = partsOfDay(cycles).flatMap(({ netTimesMs }) => netTimesMs);
      expect(inMeans.toSorted()).toEqual(expected.map(({ netMs }) => netMs).toSorted());
      const ownOf = (person: string) => ownOfTurn({ ...foldTurn(all), person }).cycles;
      for (const { person } of people) expect(ownOf(person).filter(({ isShared }) => isShared)).toEqual([]);
    }
    expect([...asking]).toEqual(expect.arrayContaining(['gap', 'two-parts', 'planned-break']));
  });

  it('leave no part with a time below nought, and each part a time within its taps', () => {
    const all = day();
    for (const edit of edits) all.push(recordAt(10 + all.length, 40_000_000 + all.length, 't:10', edit));
    for (const { netMs, fromMs, toMs } of foldTurn(all).cycles) {
      expect(netMs).toBeGreaterThanOrEqual(0);
      expect(netMs).toBeLessThanOrEqual(toMs - fromMs + 1);
    }
  });

  it('can all be taken back, and the day is what it was', () => {
    const records = day();
    const all = [...records];
    for (const edit of edits.slice(0, 100)) all.push(recordAt(10 + all.length, 40_000_000, 't:10', edit));
    const said = all.slice(records.length).map(({ sequence }) => sequence);
    for (const of of said) all.push(recordAt(10 + all.length, 40_000_000, 't:10', undone(of)));
    expect({ ...foldTurn(all), lastByHandAt: null }).toEqual({ ...foldTurn(records), lastByHandAt: null });
  });
});
