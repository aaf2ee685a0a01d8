import { describe, expect, it } from 'vitest';
import { Bench } from '../../../src/application/bench';
import { changePerson } from '../../../src/application/turn/change-person';
import { correctPerson } from '../../../src/application/turn/correct-person';
import { markPartDone } from '../../../src/application/turn/mark-part-done';
import { startTurn } from '../../../src/application/turn/start-turn';
import { undoLastTap } from '../../../src/application/turn/undo-last-tap';
import { partsOfDay } from '../../../src/domain/day/part-of-day';
import type { TurnFact } from '../../../src/domain/records/turn-fact';
import { averageOfPart } from '../../../src/domain/turn/average-of-part';
import { correctionHistory } from '../../../src/domain/turn/correction-history';
import { foldTurn } from '../../../src/domain/turn/fold-turn';
import { ledgerTotals } from '../../../src/domain/turn/ledger-totals';
import { ownOfTurn } from '../../../src/domain/turn/own-of-turn';
import { pace } from '../../../src/domain/turn/pace';
import type { Turn } from '../../../src/domain/turn/turn';
import { turnOfPerson } from '../../../src/domain/turn/turn-of-person';
import { InMemoryRecordLog } from '../../../src/storage/in-memory-record-log';
import { FakeClock } from '../../support/fake-clock';
import { stampAt } from '../../support/records';
import { done, ended, type Line, partM, resumed, stopped, turnRecords, undone } from './turn-script';

const takesOver = (person: string): TurnFact => ({ kind: 'person-changed', person });
const was = (person: string, fromS?: number, toS?: number): TurnFact => ({
  kind: 'person-corrected',
  person,
  ...(fromS === undefined ? {} : { fromMs: fromS * 1_000 }),
  ...(toS === undefined ? {} : { toMs: toS * 1_000 }),
  by: 'F1',
  why: 'told',
});
const fold = (lines: readonly Line[]) => foldTurn(turnRecords(lines));
const whoMade = (lines: readonly Line[]) =>
  fold(lines).cycles.map(({ person, isShared }) => (isShared ? `shared by ${person}` : person));

/** Two parts of K7 in 80 s; M2 takes over 30 s into the third, which takes 100 s, and makes one more in 60 s. */
const shift: Line[] = [
  [80, done()],
  [160, done()],
  [190, takesOver('M2')],
  [260, done()],
  [320, done()],
];

describe('a turn that ended, corrected from its first second to its last', () => {
  it('has that person alone: nobody is left to come after the end', () => {
    const turn = fold([
      [80, done()],
      [100, ended],
      [900, was('CY', 0, 100)],
    ]);
    expect(turn.person).toBe('CY');
    expect(turn.people.map(({ person }) => person)).toEqual(['CY']);
    // Up to a moment before its end K7 is there to the last.
    const partly = fold([
      [80, done()],
      [100, ended],
      [900, was('CY', 0, 90)],
    ]);
    expect(partly.people.map(({ person }) => person)).toEqual(['CY', 'K7']);
  });
});

describe('the record of one of two people in a turn', () => {
  it('has the stoppages, the time and the position of when that person was there', () => {
    // K7 makes M in 80 s and begins another; a stop of 60 s from 100 s on; M2 takes over at 130 s, in it.
    const turn = fold([
      [80, done()],
      [100, stopped],
      [130, takesOver('M2')],
      [160, resumed],
      [180, done()],
      [250, stopped],
      [260, resumed],
      [300, done()],
      [300, ended],
    ]);
    const [k7, m2] = ['K7', 'M2'].map((person) => turnOfPerson(turn, person));
    const stops = ({ stoppages }: Turn) => stoppages.map(({ fromMs, toMs }) => [fromMs, toMs]);
    expect([stops(k7!), stops(m2!)]).toEqual([
      [[100_000, 130_000]],
      [
        [130_000, 160_000],
        [250_000, 260_000],
      ],
    ]);
    expect([k7!, m2!].map(({ cycles }) => cycles.map(({ netMs }) => netMs))).toEqual([[80_000], [110_000]]);
    expect([k7!, m2!].map(({ ledger }) => ledgerTotals(ledger))).toMatchObject([
      { cycle: 100_000, stoppage: 30_000 },
      { cycle: 130_000, stoppage: 40_000 },
    ]);
    // Targets of 90 s: 10 s ahead and 30 s stopped; 20 s behind and 40 s stopped.
    const position = (own: Turn) => pace(own, own.lastStamp);
    expect(position(k7!)).toMatchObject({ aheadMs: 10_000, planAheadMs: -20_000 });
    expect(position(m2!)).toMatchObject({ aheadMs: -20_000, planAheadMs: -60_000 });
  });

  it('is the turn itself where nobody else was there', () => {
    const turn = fold([[80, done()]]);
    expect(turnOfPerson(turn, 'K7')).toBe(turn);
  });
});

describe('a change of person in mid-part', () => {
  it('makes the part in hand a shared one, and what comes after it the new person’s', () => {
    expect(whoMade(shift)).toEqual(['K7', 'K7', 'shared by M2', 'M2']);
    expect(fold(shift)).toMatchObject({
      person: 'M2',
      people: [{ person: 'K7', toMs: 190_000 }, { person: 'M2' }],
    });
  });

  it('counts the shared part once for the part, with the time of both, and in neither person’s own mean', () => {
    const turn = fold(shift);
    expect(partsOfDay(turn.cycles)).toMatchObject([
      { n: 4, counted: 4, netTimesMs: [80_000, 80_000, 100_000, 60_000] },
    ]);
    const ownTimes = (person: string) => ownOfTurn(turn, person).cycles.map(({ netMs }) => netMs);
    expect([ownTimes('K7'), ownTimes('M2')]).toEqual([[80_000, 80_000], [60_000]]);
    expect(averageOfPart(turn, partM.part)).toEqual({ n: 1, done: 1, meanMs: 60_000 });
  });

  it('leaves the time of each to each, and all of it adds up', () => {
    const turn = fold([
      [20, stopped],
      [50, resumed],
      [80, done()],
      [100, takesOver('M2')],
      [160, done()],
    ]);
    const time = (person: string) => ledgerTotals(ownOfTurn(turn, person).ledger);
    expect(time('K7')).toMatchObject({ cycle: 70_000, stoppage: 30_000 });
    expect(time('M2')).toMatchObject({ cycle: 60_000, stoppage: 0 });
    expect(ledgerTotals(turn.ledger)).toMatchObject({ cycle: 130_000, stoppage: 30_000 });
  });

  it('begins the position anew: neither the part they share nor what was before counts', () => {
    // The target is 90 s. 200 s into the shared part, and after it.
    const within = fold([
      [80, done()],
      [190, takesOver('M2')],
    ]);
    expect(pace(within, stampAt(280_000))).toMatchObject({ aheadMs: 0, planAheadMs: 0 });
    expect(pace(fold([[80, done()]]), stampAt(280_000))).toMatchObject({ aheadMs: 10_000 - 110_000 });
    expect(pace(fold(shift), stampAt(320_000))).toMatchObject({ aheadMs: 30_000, planAheadMs: 30_000 });
  });

  it('is nothing when it comes at the tap itself', () => {
    expect(
      whoMade([
        [80, done()],
        [80, takesOver('M2')],
        [160, done()],
      ]),
    ).toEqual(['K7', 'M2']);
  });

  it('can be taken back, and does nothing after the end', () => {
    expect(whoMade([...shift, [330, undone(13)]])).toEqual(['K7', 'K7', 'K7', 'K7']);
    expect(
      fold([
        [80, done()],
        [90, ended],
        [95, takesOver('M2')],
      ]).person,
    ).toBe('K7');
  });

  it('answers the question who came back after a long time away', () => {
    const slept: Line[] = [
      [0, { kind: 'slept', sleptMs: 900_000 }, stampAt(30_000, { wallMs: stampAt(930_000).wallMs })],
    ];
    const at = (awakeS: number) =>
      stampAt(awakeS * 1_000, { wallMs: stampAt((awakeS + 900) * 1_000).wallMs });
    const asked = (lines: Line[]) => fold([...slept, ...lines]).doubts.map(({ kind }) => kind);
    expect(asked([[0, done(), at(80)]])).toEqual(['gap', 'same-person']);
    expect(
      asked([
        [0, takesOver('M2'), at(40)],
        [0, done(), at(80)],
      ]),
    ).toEqual(['gap']);
    expect(
      asked([
        [0, done(), at(80)],
        [0, takesOver('M2'), at(90)],
      ]),
    ).toEqual(['gap', 'same-person']);
    expect(
      asked([
        [0, done(), at(80)],
        [0, was('M2', 930), at(90)],
      ]),
    ).toEqual(['gap']);
  });
});

describe('a correction of the person', () => {
  it('may be of a stretch: parts inside are the other’s, parts across its ends are shared', () => {
    const parts = [80, 160, 240, 320, 400].map((at): Line => [at, done()]);
    expect(whoMade([...parts, [500, was('M2', 160, 320)]])).toEqual(['K7', 'K7', 'M2', 'M2', 'K7']);
    expect(whoMade([...parts, [500, was('M2', 200, 320)]])).toEqual(['K7', 'K7', 'shared by M2', 'M2', 'K7']);
    expect(whoMade([...parts, [500, was('M2', 160)]])).toEqual(['K7', 'K7', 'M2', 'M2', 'M2']);
    expect(fold([...parts, [500, was('M2', 160)]]).person).toBe('M2');
  });

  it('goes by what was said last, and a whole turn takes every stretch with it', () => {
    expect(whoMade([...shift, [400, was('R4')]])).toEqual(['R4', 'R4', 'R4', 'R4']);
    expect(whoMade([...shift, [400, was('R4')], [410, was('M2', 0, 80)]])).toEqual(['M2', 'R4', 'R4', 'R4']);
  });

  it('shows who stood there before and after, with who said so and why', () => {
    const [correction] = correctionHistory(turnRecords([...shift, [400, was('R4', 0, 200)]]));
    expect(correction).toMatchObject({
      by: 'F1',
      why: 'told',
      before: { what: 'person', person: 'K7, M2' },
      after: { what: 'person', person: 'R4' },
    });
  });
});

describe('the verbs', () => {
  async function turnAtBench() {
    const clock = new FakeClock();
    const bench = await Bench.open(new InMemoryRecordLog('t'), clock);
    startTurn(bench, 'K7', partM);
    clock.pass(30_000);
    return { bench, clock };
  }

  it('change the person from the moment of the tap, and Undo brings the one before back', async () => {
    const { bench, clock } = await turnAtBench();
    const at = clock.now();
    clock.pass(5_000);
    changePerson(bench, 'M2', at);
    clock.pass(45_000);
    markPartDone(bench, clock.now());
    expect(bench.turn.value?.cycles).toMatchObject([{ person: 'M2', isShared: true, netMs: 80_000 }]);
    expect(bench.turn.value?.people[1]).toMatchObject({ fromMs: 30_000 });
    undoLastTap(bench);
    undoLastTap(bench);
    expect(bench.turn.value?.person).toBe('K7');
  });

  it('record nothing for the person who is there, and refuse a stretch that has no length', async () => {
    const { bench, clock } = await turnAtBench();
    const before = bench.changes.value;
    changePerson(bench, 'K7', clock.now());
    const say = { by: 'F1', why: 'told' };
    const refusal = 'correctPerson requires a stretch that begins in the turn and ends after it begins';
    expect(() => correctPerson(bench, 't:1', 'M2', say, { fromMs: 5, toMs: 5 })).toThrow(refusal);
    expect(() => correctPerson(bench, 't:1', 'M2', say, { fromMs: -1 })).toThrow(refusal);
    expect(bench.changes.value).toBe(before);
  });
});
