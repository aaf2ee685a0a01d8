import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Bench } from '../../src/application/bench';
import { definePart } from '../../src/application/shop/define-part';
import { setTarget } from '../../src/application/shop/set-target';
import { beginForeign } from '../../src/application/study/begin-foreign';
import { chooseElement } from '../../src/application/study/choose-element';
import { endElement } from '../../src/application/study/end-element';
import { endStudy } from '../../src/application/study/end-study';
import { holdWatch } from '../../src/application/study/hold-watch';
import { markInHand } from '../../src/application/study/mark-in-hand';
import { missBreakPoint } from '../../src/application/study/miss-break-point';
import { startStudy } from '../../src/application/study/start-study';
import { undoLastReading } from '../../src/application/study/undo-last-reading';
import { beginPart } from '../../src/application/turn/begin-part';
import { beginRework } from '../../src/application/turn/begin-rework';
import { changePart } from '../../src/application/turn/change-part';
import { changePerson } from '../../src/application/turn/change-person';
import { endPartElement } from '../../src/application/turn/end-part-element';
import { endTurn } from '../../src/application/turn/end-turn';
import { markPartDone } from '../../src/application/turn/mark-part-done';
import { partInHand } from '../../src/application/turn/part-in-hand';
import { resumeWork } from '../../src/application/turn/resume-work';
import { startTurn } from '../../src/application/turn/start-turn';
import { stopWork } from '../../src/application/turn/stop-work';
import { undoLastTap } from '../../src/application/turn/undo-last-tap';
import type { LogRecord } from '../../src/domain/records/log-record';
import { foldStudy } from '../../src/domain/study/fold-study';
import { foldTurn } from '../../src/domain/turn/fold-turn';
import { InMemoryRecordLog } from '../../src/storage/in-memory-record-log';
import { everything, heading, settled } from '../domain/study/study-at-the-bench';
import { FakeClock } from '../support/fake-clock';

const RUNS = 200;

/** A page that is so busy that nothing planned is ever called: the state follows only where somebody asks for it. */
class StuckClock extends FakeClock {
  override after(): () => void {
    return () => {};
  }
}

const part = (bench: Bench, place: number) => partInHand(bench.shop.value.parts[place]!);

/** Everything that is tapped while something is timed, as the screens tap it. */
const verbs: Record<string, (bench: Bench, clock: FakeClock) => void> = {
  begin: (bench, clock) => {
    if (bench.turn.peek()?.status === 'ended') bench.putAwayTurn();
    startTurn(bench, 'K7', part(bench, 0), clock.now());
  },
  surface: (bench, clock) => {
    const turn = bench.turn.peek();
    if (turn?.status === 'stopped') resumeWork(bench, clock.now());
    else if (turn && !turn.isPartBegun) beginPart(bench, clock.now());
    else if (turn && turn.stepsDone < (turn.inHand.elements?.length ?? 0) - 1)
      endPartElement(bench, clock.now());
    else markPartDone(bench, clock.now());
  },
  stop: (bench, clock) => stopWork(bench, clock.now()),
  undo: (bench) => undoLastTap(bench),
  rework: (bench, clock) => {
    const last = bench.turn.peek()?.cycles.at(-1);
    if (last) beginRework(bench, last.key, clock.now());
  },
  otherPart: (bench) => changePart(bench, part(bench, bench.turn.peek()?.inHand.partCode === 'M' ? 1 : 0)),
  handOver: (bench, clock) =>
    changePerson(bench, bench.turn.peek()?.person === 'K7' ? 'M2' : 'K7', clock.now()),
  end: (bench, clock) => endTurn(bench, clock.now()),
  time: (bench, clock) => {
    if (bench.study.peek()?.status !== 'open')
      startStudy(bench, heading({ timing: 'snapback' }), clock.now());
  },
  reading: (bench, clock) => endElement(bench, clock.now(), 95),
  takeReadingBack: (bench) => undoLastReading(bench),
  choose: (bench) => chooseElement(bench, 1),
  hold: (bench, clock) => holdWatch(bench, clock.now()),
  foreign: (bench, clock) => beginForeign(bench, clock.now()),
  miss: (bench) => missBreakPoint(bench),
  mark: (bench) => markInHand(bench, 'fumble'),
  endStudy: (bench, clock) => endStudy(bench, clock.now()),
};

interface Act {
  readonly verb: string;
  readonly afterMs: number;
}

/** Does all of it; where the state is to be prompt, it has followed each act before the next. */
async function records(acts: readonly Act[], clock: FakeClock, isPrompt: boolean): Promise<LogRecord[]> {
  const log = new InMemoryRecordLog('t');
  const bench = await Bench.open(log, clock);
  for (const code of ['M', 'L']) setTarget(bench, definePart(bench, code, ''), 90_000);
  verbs.begin!(bench, clock);
  for (const { verb, afterMs } of acts) {
    clock.pass(afterMs);
    verbs[verb]!(bench, clock);
    if (!isPrompt) continue;
    await settled();
    clock.pass(0);
    await settled();
  }
  const found = await everything(log);
  const of = (stream?: string) => found.filter((record) => record.stream === stream);
  const turn = bench.turn.value;
  const study = bench.study.value;
  expect(turn).toEqual(turn && foldTurn(of(turn.id)));
  expect(study).toEqual(study && foldStudy(of(study.id)));
  return found;
}

const act = fc.record({
  verb: fc.constantFrom(...Object.keys(verbs), 'surface', 'surface', 'reading', 'undo'),
  // A bounce, two fingers at once, or a part.
  afterMs: fc.oneof(fc.constantFrom(0, 1, 11), fc.integer({ min: 0, max: 120_000 })),
});

describe('what is recorded', () => {
  it('is the same whether the state follows each tap at once or only where somebody asks for it', async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(act, { maxLength: 40 }), async (acts) => {
        const prompt = await records(acts, new FakeClock(), true);
        expect(await records(acts, new StuckClock(), false)).toEqual(prompt);
      }),
      { numRuns: RUNS, seed: 26_11 },
    );
  });
});
