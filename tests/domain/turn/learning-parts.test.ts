import { describe, expect, it } from 'vitest';
import { Bench } from '../../../src/application/bench';
import { setLearning } from '../../../src/application/shop/set-learning';
import { changePerson } from '../../../src/application/turn/change-person';
import { endTurn } from '../../../src/application/turn/end-turn';
import { markPartDone } from '../../../src/application/turn/mark-part-done';
import { startTurn } from '../../../src/application/turn/start-turn';
import { againstTarget } from '../../../src/domain/day/against-target';
import { partsOfDay } from '../../../src/domain/day/part-of-day';
import type { TurnFact } from '../../../src/domain/records/turn-fact';
import { averageOfPart } from '../../../src/domain/turn/average-of-part';
import { foldTurn } from '../../../src/domain/turn/fold-turn';
import { pace } from '../../../src/domain/turn/pace';
import { InMemoryRecordLog } from '../../../src/storage/in-memory-record-log';
import { FakeClock } from '../../support/fake-clock';
import { stampAt } from '../../support/records';
import { done, type Line, partM, turnRecords } from './turn-script';

const learns = (person: string, parts: number): TurnFact => ({ kind: 'learning-noted', person, parts });
const fold = (lines: readonly Line[]) => foldTurn(turnRecords(lines));
const learning = (lines: readonly Line[]) => fold(lines).cycles.map(({ isLearning }) => isLearning);

describe('parts made while learning', () => {
  const slow: Line[] = [
    [0, learns('K7', 2)],
    [200, done()],
    [400, done()],
    [480, done()],
  ];

  it('are the number that was set, counted as done and in no mean', () => {
    const turn = fold(slow);
    expect(learning(slow)).toEqual([true, true, false]);
    expect(partsOfDay(turn.cycles)).toMatchObject([{ n: 3, good: 3, counted: 1, netTimesMs: [80_000] }]);
    expect(againstTarget(turn.cycles)).toMatchObject({ n: 1 });
  });

  it('have no position, and show who learns what they take', () => {
    const within = fold(slow.slice(0, 2));
    expect(within.isLearning).toBe(true);
    expect(pace(within, stampAt(500_000))).toMatchObject({
      aheadMs: null,
      planAheadMs: null,
      partsAhead: null,
    });
    expect(averageOfPart(within, partM.part)).toEqual({ n: 1, done: 1, meanMs: 200_000 });
    expect(fold(slow.slice(0, 3)).isLearning).toBe(false);
    expect(averageOfPart(fold(slow), partM.part)).toEqual({ n: 1, done: 3, meanMs: 80_000 });
  });

  it('are one person’s, and end when somebody says so', () => {
    const two: Line[] = [
      [0, learns('M2', 9)],
      [80, done()],
      [80, { kind: 'person-changed', person: 'M2' }],
      [160, done()],
      [240, done()],
      [250, learns('M2', 0)],
      [320, done()],
    ];
    expect(learning(two)).toEqual([false, true, true, false]);
  });
});

describe('a person who learns', () => {
  const settled = () => new Promise((resolve) => setTimeout(resolve, 200));

  it('does so for the parts that the shop set, over several turns, and nobody else does', async () => {
    const clock = new FakeClock();
    const bench = await Bench.open(new InMemoryRecordLog('t'), clock);
    setLearning(bench, 'N9', 3);
    const isLearning = async (parts: number) => {
      await settled();
      const found: boolean[] = [];
      for (let part = 0; part < parts; part += 1) {
        clock.pass(80_000);
        markPartDone(bench, clock.now());
        found.push(bench.turn.value!.cycles.at(-1)!.isLearning);
      }
      return found;
    };
    startTurn(bench, 'N9', partM);
    expect(await isLearning(2)).toEqual([true, true]);
    endTurn(bench, clock.now());
    startTurn(bench, 'K7', partM);
    expect(await isLearning(1)).toEqual([false]);
    changePerson(bench, 'N9', clock.now());
    expect(await isLearning(2)).toEqual([true, false]);
    setLearning(bench, 'N9', 0);
    expect(bench.shop.value.learners).toEqual([]);
    expect(() => setLearning(bench, 'N9', 1.5)).toThrow(
      'setLearning requires a whole number of parts up to 10,000',
    );
  });
});
