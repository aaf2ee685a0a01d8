import { describe, expect, it } from 'vitest';
import { Bench } from '../../src/application/bench';
import { endElement } from '../../src/application/study/end-element';
import { markPartDone } from '../../src/application/turn/mark-part-done';
import { resumeWork } from '../../src/application/turn/resume-work';
import { startTurn } from '../../src/application/turn/start-turn';
import { stopWork } from '../../src/application/turn/stop-work';
import { InMemoryRecordLog } from '../../src/storage/in-memory-record-log';
import { element, openStudy, settled, studyOf } from '../domain/study/study-at-the-bench';
import { FakeClock } from '../support/fake-clock';

const MINUTE_MS = 60_000;
const part = { part: 't:1', partCode: 'M', targetMs: 90_000 };

/** What the clocks do in the 10 s after the page came back, and what of it is time. */
const events = [
  {
    name: 'the tablet sleeps for an hour',
    act: (clock: FakeClock) => clock.sleep(60 * MINUTE_MS),
    takesMs: 60 * MINUTE_MS,
  },
  {
    name: 'the clock is set an hour ahead',
    act: (clock: FakeClock) => clock.setBy(60 * MINUTE_MS),
    takesMs: 0,
  },
  {
    name: 'the clock is set an hour back',
    act: (clock: FakeClock) => clock.setBy(-60 * MINUTE_MS),
    takesMs: 0,
  },
];

describe.each(events)('after the page was reloaded, $name', ({ act, takesMs }) => {
  it('once in a stop', async () => {
    const [log, clock] = [new InMemoryRecordLog('t'), new FakeClock()];
    const before = await Bench.open(log, clock);
    startTurn(before, 'K7', part);
    clock.pass(MINUTE_MS);
    markPartDone(before, clock.now());
    stopWork(before, clock.now());
    clock.pass(MINUTE_MS);
    await before.rest();
    clock.reload(2_000);
    const bench = await Bench.open(log, clock);
    clock.pass(5_000);
    act(clock);
    clock.pass(5_000);
    resumeWork(bench, clock.now());
    const [stop] = bench.turn.value!.stoppages;
    expect(stop!.toMs! - stop!.fromMs).toBe(MINUTE_MS + 12_000 + takesMs);
    await bench.rest();
  });

  it('once in a study', async () => {
    const { bench: before, clock, log } = await openStudy({ elements: [element('Load')] });
    clock.pass(2_000);
    endElement(before, clock.now(), 100);
    await settled();
    await before.rest();
    clock.reload(1_000);
    const bench = await Bench.open(log, clock);
    clock.pass(1_000);
    act(clock);
    clock.pass(2_000);
    endElement(bench, clock.now(), 100);
    expect(studyOf(bench).watch.lastAtMs).toBe(6_000 + takesMs);
    await bench.rest();
  });
});
