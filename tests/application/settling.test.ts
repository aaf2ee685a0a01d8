import { describe, expect, it } from 'vitest';
import { Bench } from '../../src/application/bench';
import { readTurnsOfDay } from '../../src/application/review/read-turns-of-day';
import { confirmPart } from '../../src/application/turn/confirm-part';
import { confirmPerson } from '../../src/application/turn/confirm-person';
import { correctPerson } from '../../src/application/turn/correct-person';
import { countTap } from '../../src/application/turn/count-tap';
import { endTurn } from '../../src/application/turn/end-turn';
import { judgeCycle } from '../../src/application/turn/judge-cycle';
import { leaveTapOut } from '../../src/application/turn/leave-tap-out';
import { markPartDone } from '../../src/application/turn/mark-part-done';
import { reclassifyTime } from '../../src/application/turn/reclassify-time';
import { recodeParts } from '../../src/application/turn/recode-parts';
import { setPartAside } from '../../src/application/turn/set-part-aside';
import { startTurn } from '../../src/application/turn/start-turn';
import { takeCorrectionBack } from '../../src/application/turn/take-correction-back';
import { takePartBack } from '../../src/application/turn/take-part-back';
import { InMemoryRecordLog } from '../../src/storage/in-memory-record-log';
import { FakeClock } from '../support/fake-clock';

const partM = { part: 't:1', partCode: 'M', targetMs: 90_000 };
const partL = { part: 't:2', partCode: 'L', targetMs: 150_000 };
const DAY = '2026-03-02';

/** A turn of three parts in 80 s each, the last with a bounce; ended and put away where it is past. */
async function turnOfThree(isPast: boolean) {
  const log = new InMemoryRecordLog('t');
  const clock = new FakeClock();
  const bench = await Bench.open(log, clock);
  startTurn(bench, 'K7', partM);
  for (let part = 0; part < 3; part += 1) {
    clock.pass(80_000);
    markPartDone(bench, clock.now());
  }
  clock.pass(300);
  markPartDone(bench, clock.now());
  const { id, cycles } = bench.turn.value!;
  if (isPast) {
    clock.pass(60_000);
    endTurn(bench, clock.now());
    bench.putAwayTurn();
    clock.pass(3_600_000);
  }
  const now = async () => {
    while (bench.saving.value.state !== 'saved') await new Promise((resolve) => setTimeout(resolve, 0));
    return (await readTurnsOfDay(bench, DAY))[0]!;
  };
  return { bench, clock, id, keys: cycles.map(({ key }) => key), now };
}

describe('settling a turn that is past', () => {
  it('counts a second tap, or leaves it out, with the code of who said so', async () => {
    const { bench, id, now } = await turnOfThree(true);
    const tap = (await now()).turn.doubts[0]!.key;
    leaveTapOut(bench, id, tap, 'F1');
    expect((await now()).turn).toMatchObject({ doubts: [], cycles: [{}, {}, {}] });
    countTap(bench, id, tap, 'F1');
    const { turn, corrections } = await now();
    expect(turn.cycles).toHaveLength(4);
    expect(corrections.map(({ kind, by }) => [kind, by])).toEqual([
      ['tap-left-out', 'F1'],
      ['tap-counted', 'F1'],
    ]);
  });

  it('recodes parts, changes the person and the time, and never its length', async () => {
    const { bench, id, keys, now } = await turnOfThree(true);
    recodeParts(bench, id, keys, partL, { by: 'F1', why: 'wrong part' });
    correctPerson(bench, id, 'M2', { by: 'F1', why: 'told' });
    const time = { category: 'rework', reason: 'rework', label: '', by: 'F1', why: 'noted' } as const;
    reclassifyTime(bench, id, { fromMs: 0, toMs: 20_000, ...time });
    const { turn, corrections } = await now();
    expect(turn.cycles.map(({ partCode }) => partCode)).toEqual(['L', 'L', 'L']);
    expect(turn.cycles.map(({ netMs }) => netMs)).toEqual([60_000, 80_000, 80_000]);
    // 3 × 80 s, 0.3 s to the bounce, 60 s to the end.
    expect(turn).toMatchObject({ person: 'M2', status: 'ended', lastAtMs: 300_300 });
    expect(corrections).toHaveLength(3);
    // A screen hands over who answers as a whole; what a copy does not know may not come along into the record.
    const who = { by: 'F1', why: 'said so', isAtStation: false };
    reclassifyTime(bench, id, { fromMs: 0, toMs: 10_000, ...time, ...who });
    expect(JSON.stringify(await bench.log.readStream(id))).not.toContain('isAtStation');
    expect(() => reclassifyTime(bench, id, { fromMs: 5, toMs: 5, ...time })).toThrow(
      'reclassifyTime requires a stretch that begins in the turn and ends after it begins',
    );
  });

  it('takes a correction back: the figures are those of before, and both stay on record', async () => {
    const { bench, id, now } = await turnOfThree(true);
    const before = (await now()).turn;
    const time = { category: 'set-up', reason: 'set-up', label: '', by: 'F1', why: 'a slip' } as const;
    reclassifyTime(bench, id, { fromMs: 0, toMs: before.lastAtMs, ...time });
    const { turn, corrections } = await now();
    expect(turn.cycles.map(({ netMs }) => netMs)).toEqual([0, 0, 0]);
    takeCorrectionBack(bench, id, corrections[0]!.key, 'F2');
    const after = await now();
    expect(after.turn.ledger).toEqual(before.ledger);
    expect(after.corrections.map(({ kind, by, isStanding }) => [kind, by, isStanding])).toEqual([
      ['time-reclassified', 'F1', false],
      ['undone', 'F2', false],
    ]);
  });

  it('sets a part aside and takes it back, and judges one to be two', async () => {
    const { bench, id, keys, now } = await turnOfThree(true);
    setPartAside(bench, id, keys[0]!, 'drill broke', 'F1');
    expect((await now()).turn.cycles.map(({ isCounted }) => isCounted)).toEqual([false, true, true]);
    takePartBack(bench, id, keys[0]!, 'F1');
    judgeCycle(bench, id, keys[1]!, 'two-parts', 'F1');
    const { turn } = await now();
    expect(turn.cycles.map(({ netMs }) => netMs)).toEqual([80_000, 40_000, 40_000, 80_000]);
    confirmPart(bench, id, keys[0]!);
    confirmPerson(bench, id, keys[0]!);
    expect((await now()).corrections.map(({ by }) => by)).toEqual(['F1', 'F1', 'F1', '', '']);
  });
});

describe('recoding parts of the turn in hand', () => {
  it('changes the part in hand with its newest part, so that the next tap is right', async () => {
    const { bench, clock, id, keys } = await turnOfThree(false);
    recodeParts(bench, id, keys.slice(0, 1), partL, { by: 'K7', why: 'chosen' });
    expect(bench.turn.value?.inHand.partCode).toBe('M');
    recodeParts(bench, id, keys.slice(1), partL, { by: 'K7', why: 'chosen' });
    expect(bench.turn.value?.inHand).toEqual(partL);
    clock.pass(140_000);
    markPartDone(bench, clock.now());
    expect(bench.turn.value?.cycles.at(-1)).toMatchObject({ partCode: 'L', targetMs: 150_000 });
  });
});
