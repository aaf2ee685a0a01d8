import { beforeEach, describe, expect, it } from 'vitest';
import { Bench } from '../../src/application/bench';
import { beginRework } from '../../src/application/turn/begin-rework';
import { endTurn } from '../../src/application/turn/end-turn';
import { judgePart } from '../../src/application/turn/judge-part';
import { leftToRework } from '../../src/application/turn/left-to-rework';
import { markPartDone } from '../../src/application/turn/mark-part-done';
import { resumeWork } from '../../src/application/turn/resume-work';
import { startTurn } from '../../src/application/turn/start-turn';
import { undoLastTap } from '../../src/application/turn/undo-last-tap';
import { foldTurn } from '../../src/domain/turn/fold-turn';
import { ledgerTotals } from '../../src/domain/turn/ledger-totals';
import { InMemoryRecordLog } from '../../src/storage/in-memory-record-log';
import { partL, partM } from '../domain/turn/turn-script';
import { FakeClock } from '../support/fake-clock';

let clock: FakeClock;
let bench: Bench;
const now = () => clock.now();
const turn = () => bench.turn.value!;

function makePart(): string {
  clock.pass(80_000);
  markPartDone(bench, now());
  return turn().cycles.at(-1)!.key;
}

/** KA makes two parts, marks the first, and leaves; MO is on another part. */
beforeEach(async () => {
  clock = new FakeClock();
  bench = await Bench.open(new InMemoryRecordLog('t'), clock);
  startTurn(bench, 'KA', partM);
  judgePart(bench, turn().id, makePart(), 'rework');
  makePart();
  endTurn(bench, now());
  startTurn(bench, 'MO', partL);
});

const left = async () =>
  (await leftToRework(bench)).map(({ key, person, partCode }) => [key, person, partCode]);
const firstPart = async () => (await leftToRework(bench))[0]!.key;

describe('a part that waited at the end of a turn', () => {
  it('waits in the next one at that tablet, though it is another person’s and another part', async () => {
    expect(await left()).toEqual([['t:2', 'KA', 'M']]);
    endTurn(bench, now());
    startTurn(bench, 'KA', partM);
    expect(await left()).toEqual([['t:2', 'KA', 'M']]);
  });

  it('is made good there: the time is rework of that turn, tied to the part, and no part of it changes', async () => {
    const key = await firstPart();
    const owner = (await leftToRework(bench))[0]!.turn;
    const before = foldTurn(await bench.log.readStream(owner));
    const own = makePart();
    beginRework(bench, key, now());
    clock.pass(50_000);
    resumeWork(bench, now());
    makePart();
    expect(turn().stoppages).toMatchObject([{ ofPart: key, category: 'rework' }]);
    expect(ledgerTotals(turn().ledger)).toMatchObject({ rework: 50_000, cycle: 160_000 });
    expect(turn().cycles.map(({ outcome }) => outcome)).toEqual(['good', 'good']);
    expect(turn().cycles[0]!.key).toBe(own);
    const { id } = turn();
    expect(foldTurn(await bench.log.readStream(owner))).toEqual(before);
    endTurn(bench, now());
    startTurn(bench, 'KA', partM);
    expect(await left()).toEqual([]);
    const here = await bench.log.readStream(id);
    expect(here.some(({ fact }) => fact.kind === 'part-judged')).toBe(false);
  });

  it('waits again when the beginning of its rework is taken back', async () => {
    beginRework(bench, await firstPart(), now());
    undoLastTap(bench);
    endTurn(bench, now());
    expect(await left()).toHaveLength(1);
  });

  it('waits no more once it is called scrap in its own turn', async () => {
    const [part] = await leftToRework(bench);
    judgePart(bench, part!.turn, part!.key, 'scrap');
    expect(await left()).toEqual([]);
  });

  it('does not wait at another tablet', async () => {
    const { log } = bench;
    await bench.rest();
    const other = Object.assign(Object.create(log), { device: 'u' });
    expect(await leftToRework(await Bench.open(other, clock))).toEqual([]);
  });
});
