import { describe, expect, it } from 'vitest';
import { beginForeign } from '../../../src/application/study/begin-foreign';
import { endMachine } from '../../../src/application/study/end-machine';
import { missBreakPoint } from '../../../src/application/study/miss-break-point';
import { inHandOf, noteElement } from '../../../src/application/study/note-element';
import { undoLastReading } from '../../../src/application/study/undo-last-reading';
import { foreignLetters } from '../../../src/domain/study/foreign-letters';
import { element, lines, openStudy, studyOf, tapAfter } from './study-at-the-bench';

// Times are of our own making; each expectation is a difference of the taps above it.

const cell = [
  element('Load'),
  element('Bore', { work: 'machine' }),
  element('Inspect', { placement: 'internal' }),
  element('Clean', { placement: 'internal' }),
];
const open = () => openStudy({ elements: cell, lanes: 2 });
type At = Awaited<ReturnType<typeof open>>;

function machineAfter({ bench, clock }: At, ms: number) {
  clock.pass(ms);
  endMachine(bench, clock.now());
}
const waits = ({ bench }: At) => studyOf(bench).waits.map(({ cycle, observedMs }) => [cycle, observedMs]);

describe('two lanes', () => {
  it('start the machine with the tap that ends the element before it, and read it beside the operator', async () => {
    const at = await open();
    tapAfter(at, 2_000);
    tapAfter(at, 1_000);
    machineAfter(at, 500);
    tapAfter(at, 700);
    expect(lines(studyOf(at.bench))).toEqual([
      'Load 1: 2000',
      'Inspect 1: 1000',
      'Bore 1: 1500',
      'Clean 1: 1200',
    ]);
    expect(waits(at)).toEqual([]);
    expect(studyOf(at.bench).watch).toMatchObject({ cycle: 2, elementIndex: 0, isWaiting: false });
  });

  it('let the operator wait for the machine, and begin the next element with the tap at which it stops', async () => {
    const at = await open();
    for (const ms of [2_000, 1_000, 1_200]) tapAfter(at, ms);
    expect(studyOf(at.bench).watch.isWaiting).toBe(true);
    machineAfter(at, 800);
    expect(waits(at)).toEqual([[1, 800]]);
    tapAfter(at, 2_100);
    expect(lines(studyOf(at.bench)).slice(3)).toEqual(['Bore 1: 3000', 'Load 2: 2100']);
  });

  it('account for every millisecond of the operator: elements and waits are the watch', async () => {
    const at = await open();
    for (const ms of [2_000, 1_000, 1_200]) tapAfter(at, ms);
    machineAfter(at, 800);
    for (const ms of [2_100, 900]) tapAfter(at, ms);
    const study = studyOf(at.bench);
    const operator = study.readings
      .filter(({ row }) => row.work !== 'machine')
      .reduce((sum, { row }) => sum + row.observedMs!, 0);
    const waited = study.waits.reduce((sum, { observedMs }) => sum + observedMs, 0);
    expect(operator + waited).toBe(study.watch.lastAtMs);
  });

  it('leave the run out whose end nobody saw, and time the operator all the same', async () => {
    const at = await open();
    for (const ms of [2_000, 1_000, 1_200]) tapAfter(at, ms);
    // Load has begun: the first tap says so, the second ends it.
    tapAfter(at, 900);
    tapAfter(at, 2_000);
    expect(lines(studyOf(at.bench)).slice(3)).toEqual(['Bore 1: – (missed-break-point)', 'Load 2: 2000']);
    expect(waits(at)).toEqual([[1, 900]]);
  });

  it('keep a foreign element of the operator out of the element, and not out of the run', async () => {
    const at = await open();
    tapAfter(at, 2_000);
    at.clock.pass(300);
    beginForeign(at.bench, at.clock.now());
    machineAfter(at, 400);
    tapAfter(at, 200);
    tapAfter(at, 100);
    expect(lines(studyOf(at.bench))).toEqual([
      'Load 1: 2000',
      'Bore 1: 700',
      'Foreign element 1: 600',
      'Inspect 1: 400',
    ]);
  });

  it('put the letter of a foreign element into the operator’s element, though the machine stopped before it', async () => {
    const at = await open();
    tapAfter(at, 2_000);
    beginForeign(at.bench, at.clock.now());
    tapAfter(at, 200);
    machineAfter(at, 400);
    tapAfter(at, 100);
    const { readings } = studyOf(at.bench);
    const [letter] = foreignLetters(readings, 2);
    expect(readings.find(({ id }) => id === letter!.inside)!.row.element).toBe('Inspect');
  });

  it('take the end of a run back: the machine goes on, and the operator waits again', async () => {
    const at = await open();
    for (const ms of [2_000, 1_000, 1_200]) tapAfter(at, ms);
    machineAfter(at, 800);
    undoLastReading(at.bench);
    expect(studyOf(at.bench).watch).toMatchObject({ isWaiting: true, machine: { elementIndex: 1 } });
    machineAfter(at, 500);
    expect(lines(studyOf(at.bench)).at(-1)).toBe('Bore 1: 3500');
    expect(waits(at)).toEqual([[1, 1_300]]);
  });

  it('say what Undo takes back: the stop of the machine, the beginning after a wait', async () => {
    const at = await open();
    for (const ms of [2_000, 1_000, 1_200]) tapAfter(at, ms);
    machineAfter(at, 800);
    expect(studyOf(at.bench).undoable).toMatchObject({ kind: 'machine-ended', element: 'Bore' });
    undoLastReading(at.bench);
    tapAfter(at, 900);
    expect(studyOf(at.bench).undoable).toMatchObject({ kind: 'wait-ended', element: 'Load' });
  });

  it('run the machine without a time where the break point that starts it was missed, and wait for its stop', async () => {
    const at = await open();
    at.clock.pass(2_000);
    missBreakPoint(at.bench);
    for (const ms of [1_000, 1_200]) tapAfter(at, ms);
    expect(studyOf(at.bench).watch.isWaiting).toBe(true);
    machineAfter(at, 800);
    expect(lines(studyOf(at.bench)).at(-1)).toBe('Bore 1: – (missed-break-point)');
    expect(waits(at)).toEqual([[1, 800]]);
  });

  it('give external work a clean start as the machine stops, where the end of the internal work was missed', async () => {
    const at = await open();
    for (const ms of [2_000, 1_000]) tapAfter(at, ms);
    at.clock.pass(900);
    missBreakPoint(at.bench);
    expect(studyOf(at.bench).watch).toMatchObject({ isWaiting: true, elementIndex: 0, cycle: 2 });
    expect(inHandOf(studyOf(at.bench))).toMatchObject({ cycle: 1, elementNo: 4 });
    noteElement(at.bench, inHandOf(studyOf(at.bench)), 'brush fell');
    machineAfter(at, 600);
    tapAfter(at, 2_100);
    const study = studyOf(at.bench);
    // What is neither the work nor the wait alone is no reading, and still accounted for.
    expect(lines(study).slice(2)).toEqual([
      'Bore 1: 2500',
      'Clean 1: 1500 (missed-break-point)',
      'Load 2: 2100',
    ]);
    expect(study.readings[3]!.row.carried.note).toBe('brush fell');
    expect(waits(at)).toEqual([]);
  });

  it('read an older record of a missed break point as it was read: its time is in the next element', async () => {
    const at = await open();
    for (const ms of [2_000, 1_000]) tapAfter(at, ms);
    at.clock.pass(900);
    at.bench.record(studyOf(at.bench).id, [{ kind: 'break-point-missed' }]);
    expect(studyOf(at.bench).watch.isWaiting).toBe(false);
  });

  it('run one machine element after the other, and the first of the method from the start', async () => {
    const at = await openStudy({
      lanes: 2,
      elements: [
        element('Heat', { work: 'machine' }),
        element('Press', { work: 'machine' }),
        element('Trim', { placement: 'internal' }),
        element('Load'),
      ],
    });
    machineAfter(at, 1_000);
    tapAfter(at, 500);
    machineAfter(at, 400);
    tapAfter(at, 300);
    expect(lines(studyOf(at.bench))).toEqual(['Heat 1: 1000', 'Trim 1: 1500', 'Press 1: 900', 'Load 1: 300']);
    expect(studyOf(at.bench).watch.machine).toMatchObject({ elementIndex: 0, cycle: 1 });
  });

  it('start the machine with the external element, also where the method lists it behind the internal work', async () => {
    const at = await openStudy({
      lanes: 2,
      elements: [
        element('Load'),
        element('Inspect', { placement: 'internal' }),
        element('Bore', { work: 'machine' }),
      ],
    });
    tapAfter(at, 2_000);
    tapAfter(at, 1_000);
    machineAfter(at, 500);
    expect(lines(studyOf(at.bench))).toEqual(['Load 1: 2000', 'Inspect 1: 1000', 'Bore 1: 1500']);
  });

  it('are one lane where the method has no machine', async () => {
    const at = await openStudy({ elements: [element('A'), element('B')], lanes: 2 });
    tapAfter(at, 1_000);
    tapAfter(at, 2_000);
    expect(lines(studyOf(at.bench))).toEqual(['A 1: 1000', 'B 1: 2000']);
  });
});
