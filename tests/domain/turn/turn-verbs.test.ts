import { describe, expect, it } from 'vitest';
import { Bench } from '../../../src/application/bench';
import { changePart } from '../../../src/application/turn/change-part';
import { endTurn } from '../../../src/application/turn/end-turn';
import { enterTurn } from '../../../src/application/turn/enter-turn';
import { explainChange } from '../../../src/application/turn/explain-change';
import { explainStoppage } from '../../../src/application/turn/explain-stoppage';
import { judgePart } from '../../../src/application/turn/judge-part';
import { lastTurn } from '../../../src/application/turn/last-turn';
import { markPartDone } from '../../../src/application/turn/mark-part-done';
import { noteTurn } from '../../../src/application/turn/note-turn';
import { resumeWork } from '../../../src/application/turn/resume-work';
import { startTurn } from '../../../src/application/turn/start-turn';
import { stopWork } from '../../../src/application/turn/stop-work';
import { undoLastTap } from '../../../src/application/turn/undo-last-tap';
import { ledgerTotals } from '../../../src/domain/turn/ledger-totals';
import { pace } from '../../../src/domain/turn/pace';
import { InMemoryRecordLog } from '../../../src/storage/in-memory-record-log';
import { FakeClock } from '../../support/fake-clock';
import { recordAt } from '../../support/records';
import { partL, partM } from './turn-script';

async function openBench() {
  const log = new InMemoryRecordLog('t');
  const clock = new FakeClock();
  const bench = await Bench.open(log, clock);
  return { log, clock, bench };
}

async function openTurn() {
  const opened = await openBench();
  startTurn(opened.bench, 'K7', partM);
  return opened;
}

const settled = () => new Promise((resolve) => setTimeout(resolve, 0));
const turnOf = (bench: Bench) => bench.turn.value!;
const factsOf = async (log: InMemoryRecordLog) => {
  await settled();
  const kinds: string[] = [];
  for await (const batch of log.readAll()) kinds.push(...batch.map(({ fact }) => fact.kind));
  return kinds;
};

describe('the verbs of a turn', () => {
  it('do nothing while there is no turn', async () => {
    const { bench, clock, log } = await openBench();
    const at = clock.now();
    markPartDone(bench, at);
    stopWork(bench, at);
    resumeWork(bench, at);
    changePart(bench, partL);
    undoLastTap(bench);
    endTurn(bench, at);
    expect(bench.turn.value).toBeNull();
    expect(await factsOf(log)).toEqual([]);
  });

  it('do nothing after the turn has ended', async () => {
    const { bench, clock, log } = await openTurn();
    clock.pass(80_000);
    markPartDone(bench, clock.now());
    endTurn(bench, clock.now());
    const at = clock.now();
    markPartDone(bench, at);
    stopWork(bench, at);
    resumeWork(bench, at);
    changePart(bench, partL);
    undoLastTap(bench);
    endTurn(bench, at);
    expect(await factsOf(log)).toEqual(['turn-started', 'part-done', 'turn-ended']);
  });

  it('begin no second turn while one runs: a bounce on Start would lose the first', async () => {
    const { bench, clock, log } = await openTurn();
    clock.pass(100);
    startTurn(bench, 'K8', partL);
    expect(turnOf(bench).person).toBe('K7');
    expect(await factsOf(log)).toEqual(['turn-started']);
  });

  it('begin another turn once the one before has ended', async () => {
    const { bench, clock } = await openTurn();
    clock.pass(80_000);
    endTurn(bench, clock.now());
    startTurn(bench, 'K8', partL);
    expect(turnOf(bench)).toMatchObject({ person: 'K8', status: 'running', cycles: [] });
  });

  it('take the moment of the tap, not the moment at which it was handled', async () => {
    const { bench, clock } = await openTurn();
    clock.pass(80_000);
    const tapped = clock.now();
    clock.pass(300);
    markPartDone(bench, tapped);
    expect(turnOf(bench).cycles.map(({ netMs }) => netMs)).toEqual([80_000]);
  });

  it('count one part for one tap, under the part and the target in hand', async () => {
    const { bench, clock } = await openTurn();
    clock.pass(80_000);
    markPartDone(bench, clock.now());
    changePart(bench, partL);
    clock.pass(140_000);
    markPartDone(bench, clock.now());
    expect(turnOf(bench).cycles).toMatchObject([
      { partCode: 'M', targetMs: 90_000, netMs: 80_000 },
      { partCode: 'L', targetMs: 150_000, netMs: 140_000 },
    ]);
  });

  it('stop once and go on once, however often they are tapped', async () => {
    const { bench, clock, log } = await openTurn();
    stopWork(bench, clock.now());
    stopWork(bench, clock.now());
    clock.pass(20_000);
    resumeWork(bench, clock.now());
    resumeWork(bench, clock.now());
    expect(turnOf(bench).stoppages).toHaveLength(1);
    expect(await factsOf(log)).toEqual(['turn-started', 'stopped', 'resumed']);
  });

  it('take taps back one by one, down to the start and no further', async () => {
    const { bench, clock, log } = await openTurn();
    const before = turnOf(bench);
    clock.pass(80_000);
    markPartDone(bench, clock.now());
    stopWork(bench, clock.now());
    undoLastTap(bench);
    expect(turnOf(bench).status).toBe('running');
    undoLastTap(bench);
    undoLastTap(bench);
    expect(turnOf(bench).cycles).toEqual(before.cycles);
    // The part in hand has run since the start again: 80 s.
    expect(pace(turnOf(bench), clock.now()).partElapsedMs).toBe(80_000);
    expect(await factsOf(log)).toEqual(['turn-started', 'part-done', 'stopped', 'undone', 'undone']);
  });

  it('explain a stoppage and judge a part after the turn has ended, without making it longer', async () => {
    const { bench, clock } = await openTurn();
    clock.pass(30_000);
    stopWork(bench, clock.now());
    clock.pass(20_000);
    resumeWork(bench, clock.now());
    clock.pass(40_000);
    markPartDone(bench, clock.now());
    endTurn(bench, clock.now());
    clock.pass(600_000);
    const { id, stoppages, cycles } = turnOf(bench);
    explainStoppage(bench, id, stoppages[0]!.key, { id: 'set-up', label: '', category: 'set-up' });
    judgePart(bench, id, cycles[0]!.key, 'rework');
    // 30 + 20 + 40 = 90 s elapsed, 20 of them set-up.
    expect(turnOf(bench).lastAtMs).toBe(90_000);
    expect(ledgerTotals(turnOf(bench).ledger)).toMatchObject({ cycle: 70_000, 'set-up': 20_000 });
    expect(turnOf(bench).cycles[0]!.outcome).toBe('rework');
  });

  it('go on after a reload in the middle of a stoppage, which lasted by the wall clock', async () => {
    const { bench, clock, log } = await openTurn();
    clock.pass(30_000);
    stopWork(bench, clock.now());
    await settled();
    clock.reload(45_000);
    const again = await Bench.open(log, clock);
    expect(pace(turnOf(again), clock.now()).stoppedForMs).toBe(45_000);
    resumeWork(again, clock.now());
    clock.pass(50_000);
    markPartDone(again, clock.now());
    // 30 s before the stoppage and 50 s after it.
    expect(turnOf(again).cycles.map(({ netMs }) => netMs)).toEqual([80_000]);
  });
});

describe('changePart', () => {
  it('asks what the time since the last tap was, until explainChange says it', async () => {
    const { bench, clock } = await openTurn();
    clock.pass(120_000);
    changePart(bench, partL);
    const { id, doubts } = bench.turn.value!;
    expect(doubts).toMatchObject([{ kind: 'before-change', toMs: 120_000 }]);
    explainChange(bench, id, doubts[0]!.key, 'set-up');
    expect(bench.turn.value!.doubts).toEqual([]);
    expect(ledgerTotals(bench.turn.value!.ledger)['set-up']).toBe(120_000);
  });

  it('records nothing when the part in hand is chosen again, unless its target has changed', async () => {
    const { bench, clock } = await openTurn();
    clock.pass(60_000);
    changePart(bench, partM);
    expect(bench.turn.value!.undoable).toBeNull();
    changePart(bench, { ...partM, targetMs: 60_000 });
    expect(bench.turn.value!).toMatchObject({ inHand: { targetMs: 60_000 }, doubts: [], partBeganAtMs: 0 });
  });
});

describe('noteTurn', () => {
  it('keeps the last words of a turn, also after its end, and writes the same ones once', async () => {
    const { log, bench, clock } = await openTurn();
    clock.pass(60_000);
    endTurn(bench, clock.now());
    const note = () => bench.turn.value!.note;
    expect(note()).toBe('');
    noteTurn(bench, bench.turn.value!, 'The first pallet was wet.');
    noteTurn(bench, bench.turn.value!, ' The first two pallets were wet. ');
    noteTurn(bench, bench.turn.value!, 'The first two pallets were wet.');
    expect(note()).toBe('The first two pallets were wet.');
    expect(bench.turn.value!.lastAtMs).toBe(60_000);
    await settled();
    const kinds = (await log.readStream(bench.turn.value!.id)).map(({ fact }) => fact.kind);
    expect(kinds.filter((kind) => kind === 'turn-noted')).toHaveLength(2);
  });
});

describe('lastTurn', () => {
  it('is null in a shop that never had a turn', async () => {
    const { bench } = await openBench();
    expect(await lastTurn(bench)).toBeNull();
  });

  it('has the person of the newest turn and the part made last in it, also after it was put away', async () => {
    const { bench, clock } = await openTurn();
    clock.pass(60_000);
    markPartDone(bench, clock.now());
    changePart(bench, partL);
    clock.pass(90_000);
    markPartDone(bench, clock.now());
    endTurn(bench, clock.now());
    bench.putAwayTurn();
    await settled();
    const last = await lastTurn(bench);
    expect(last).toMatchObject({ person: 'K7', status: 'ended' });
    expect(last!.cycles.at(-1)!.part).toBe(partL.part);
  });

  it('is this tablet’s own, whatever newer turn of another came with a copy; without one, the newest of all', async () => {
    const start = { kind: 'turn-started', starts: 'turn', person: 'DX', ...partL } as const;
    const foreign = recordAt(1, 900_000, 'other:1', start, { device: 'other' });
    const { bench, clock, log } = await openTurn();
    clock.pass(60_000);
    endTurn(bench, clock.now());
    bench.putAwayTurn();
    await log.append([foreign]);
    await settled();
    expect((await lastTurn(bench))?.person).toBe('K7');
    const taken = await openBench();
    await taken.log.append([foreign]);
    expect((await lastTurn(taken.bench))?.person).toBe('DX');
  });

  it('is one that was tapped: what was written down afterwards was left by nobody', async () => {
    const { bench, clock } = await openTurn();
    clock.pass(60_000);
    endTurn(bench, clock.now());
    bench.putAwayTurn();
    const line = { part: 't:9', partCode: 'L', targetMs: null, done: 3, rework: 0, scrap: 0 };
    const told = {
      person: 'M2',
      fromWallMs: clock.wallMs - 60_000,
      toWallMs: clock.wallMs,
      lines: [line],
      stops: [],
    };
    enterTurn(bench, told, { by: 'F1', why: 'tablet was wet' });
    await settled();
    expect((await lastTurn(bench))?.person).toBe('K7');
  });

  it('is shown again with its record, and never in the place of a turn that runs', async () => {
    const { bench, clock } = await openTurn();
    const { id } = bench.turn.value!;
    clock.pass(60_000);
    endTurn(bench, clock.now());
    bench.putAwayTurn();
    await settled();
    await bench.showEndedTurn(id);
    expect(bench.turn.value).toMatchObject({ id, status: 'ended', lastAtMs: 60_000 });
    bench.putAwayTurn();
    startTurn(bench, 'M2', partM);
    await bench.showEndedTurn(id);
    expect(bench.turn.value).toMatchObject({ person: 'M2', status: 'running' });
  });
});
