import { describe, expect, it } from 'vitest';
import { Bench } from '../../../src/application/bench';
import { readTurnsOfDay } from '../../../src/application/review/read-turns-of-day';
import { changePart } from '../../../src/application/turn/change-part';
import { markPartDone } from '../../../src/application/turn/mark-part-done';
import { startTurn } from '../../../src/application/turn/start-turn';
import { partOfDoubt } from '../../../src/domain/turn/part-of-doubt';
import { operatorOf, question, type Who } from '../../../src/screens/settle/question';
import { InMemoryRecordLog } from '../../../src/storage/in-memory-record-log';
import { partL, partM } from '../../domain/turn/turn-script';
import { FakeClock } from '../../support/fake-clock';

const foreman: Who = { by: 'F1', why: 'Told by the operator', isAtStation: false };

/** M done six times, the last with a bounce; then one of twice the time; then a change to L after two minutes. */
async function turnWithQuestions() {
  const clock = new FakeClock();
  const bench = await Bench.open(new InMemoryRecordLog('t'), clock);
  startTurn(bench, 'K7', partM);
  for (let part = 0; part < 6; part += 1) {
    clock.pass(80_000);
    markPartDone(bench, clock.now());
  }
  clock.pass(300);
  markPartDone(bench, clock.now());
  clock.pass(160_000);
  markPartDone(bench, clock.now());
  clock.pass(120_000);
  changePart(bench, partL);
  const turn = () => bench.turn.value!;
  const corrections = async () => {
    while (bench.saving.value.state !== 'saved') await new Promise((resolve) => setTimeout(resolve, 0));
    return (await readTurnsOfDay(bench, '2026-03-02'))[0]!.corrections;
  };
  return { bench, turn, corrections };
}

describe('the open questions of a turn', () => {
  it('name the part they are about', async () => {
    const { turn } = await turnWithQuestions();
    expect(turn().doubts.map((doubt) => [doubt.kind, partOfDoubt(turn(), doubt)])).toEqual([
      ['second-tap', 'M'],
      ['two-parts', 'M'],
      ['before-change', 'L'],
    ]);
  });

  it('are closed by any of their answers, and by one answer each', async () => {
    const { turn } = await turnWithQuestions();
    for (const [place, { kind }] of turn().doubts.entries()) {
      const { bench } = await turnWithQuestions();
      const count = question(bench, bench.turn.value!, bench.turn.value!.doubts[place]!).choices.length;
      for (let which = 0; which < count; which += 1) {
        const fresh = await turnWithQuestions();
        const doubt = fresh.turn().doubts[place]!;
        const choice = question(fresh.bench, fresh.turn(), doubt).choices[which]!;
        if (!('say' in choice)) throw new Error(`${kind} asks on`);
        choice.say(operatorOf(fresh.turn()));
        expect(fresh.turn().doubts.map((open) => open.kind)).not.toContain(kind);
        expect(fresh.turn().doubts).toHaveLength(2);
      }
    }
  });

  it('are answered under a code away from the station, and under none at it', async () => {
    const { bench, turn, corrections } = await turnWithQuestions();
    for (const [place, who] of [foreman, operatorOf(turn()), foreman].entries()) {
      const choice = question(bench, turn(), turn().doubts[0]!).choices[place]!;
      if ('say' in choice) choice.say(who);
    }
    expect((await corrections()).map(({ kind, by }) => [kind, by])).toEqual([
      ['tap-counted', 'F1'],
      ['cycle-judged', ''],
      ['change-explained', 'F1'],
    ]);
  });
});
