import { describe, expect, it } from 'vitest';
import { chooseElement } from '../../../src/application/study/choose-element';
import { endStudy } from '../../../src/application/study/end-study';
import { missBreakPoint } from '../../../src/application/study/miss-break-point';
import { undoLastReading } from '../../../src/application/study/undo-last-reading';
import { internalAfterStop } from '../../../src/domain/study/one-lane';
import { studyClock } from '../../../src/domain/study/study-clock';
import { summariseStudy } from '../../../src/domain/study/summarise-study';
import { element, lines, openStudy, studyOf, tapAfter } from './study-at-the-bench';

// Times are of our own making; each expectation is a difference of the taps above it.

const load = element('Load');
const bore = element('Bore', { work: 'machine' });
const inspect = element('Inspect', { placement: 'internal' });
const cell = [load, inspect, bore];
const noAllowance = { allowancePct: 0, basis: 'normal_time', machineAllowancePct: 0 } as const;
const open = () => openStudy({ elements: cell, lanes: 1, terms: noAllowance });

describe('one lane', () => {
  it('reads a run from its beginning to its own tap, with the internal work that was tapped in it', async () => {
    const at = await open();
    for (const ms of [6_000, 5_000, 8_000]) tapAfter(at, ms);
    const study = studyOf(at.bench);
    expect(lines(study)).toEqual(['Load 1: 6000', 'Inspect 1: 5000', 'Bore 1: 13000']);
    expect(study.waits).toEqual([{ cycle: 1, observedMs: 8_000 }]);
  });

  it('gives a cycle that the clock gives too', async () => {
    const at = await open();
    for (const ms of [6_000, 5_000, 8_000, 7_000, 4_000, 9_000]) tapAfter(at, ms);
    endStudy(at.bench, at.clock.now());
    const study = studyOf(at.bench);
    const summary = summariseStudy(study.readings.map(({ row }) => row));
    const clock = studyClock(study)!;
    expect(summary.normalTimeMs! * 2).toBe(clock.elapsedMs);
    expect(clock.unaccounted).toBe(0);
    expect(summary.governing).toBe('machine');
  });

  it('leaves a run out whose beginning nobody saw', async () => {
    const at = await open();
    missBreakPoint(at.bench);
    for (const ms of [11_000, 8_000]) tapAfter(at, ms);
    expect(lines(studyOf(at.bench))).toEqual([
      'Load 1: – (missed-break-point)',
      'Inspect 1: 11000 (missed-break-point)',
      'Bore 1: 8000 (missed-break-point)',
    ]);
  });

  it('begins a run anew in the next cycle where its end was not seen', async () => {
    const at = await open();
    for (const ms of [6_000, 5_000]) tapAfter(at, ms);
    missBreakPoint(at.bench);
    for (const ms of [9_000, 5_000, 7_000]) tapAfter(at, ms);
    expect(lines(studyOf(at.bench)).slice(-2)).toEqual(['Inspect 2: 5000', 'Bore 2: 12000']);
  });

  it('reads no run for an element that was chosen out of its turn', async () => {
    const at = await open();
    chooseElement(at.bench, 3);
    tapAfter(at, 4_000);
    expect(lines(studyOf(at.bench))).toEqual(['Bore 1: 4000 (missed-break-point)']);
  });

  it('takes the end of a run back as if it had not been tapped', async () => {
    const at = await open();
    for (const ms of [6_000, 5_000, 8_000]) tapAfter(at, ms);
    undoLastReading(at.bench);
    tapAfter(at, 1_000);
    expect(lines(studyOf(at.bench)).at(-1)).toBe('Bore 1: 14000');
  });

  it('reads the second of two runs from the end of the first', async () => {
    const elements = [
      load,
      element('Heat', { work: 'machine' }),
      inspect,
      element('Press', { work: 'machine' }),
    ];
    const at = await openStudy({ elements, lanes: 1 });
    for (const ms of [6_000, 3_000, 2_000, 1_000]) tapAfter(at, ms);
    expect(lines(studyOf(at.bench)).slice(1)).toEqual(['Heat 1: 3000', 'Inspect 1: 2000', 'Press 1: 3000']);
  });

  it('reads a run that passes the end of the cycle from the cycle before', async () => {
    const at = await openStudy({ elements: [inspect, bore, load], lanes: 1 });
    for (const ms of [5_000, 8_000, 6_000, 4_000, 7_000]) tapAfter(at, ms);
    expect(lines(studyOf(at.bench))).toEqual([
      'Inspect 1: 5000',
      'Bore 1: 13000',
      'Load 1: 6000',
      'Inspect 2: 4000',
      'Bore 2: 11000',
    ]);
  });

  it('leaves every time its own where no internal work lies in a run, and on a sheet of paper', async () => {
    const at = await openStudy({ elements: [load, element('Trim'), bore], lanes: 1 });
    for (const ms of [6_000, 3_000, 8_000]) tapAfter(at, ms);
    expect(lines(studyOf(at.bench)).at(-1)).toBe('Bore 1: 8000');
    const paper = await openStudy({ elements: cell });
    for (const ms of [6_000, 5_000, 8_000]) tapAfter(paper, ms);
    expect(lines(studyOf(paper.bench)).at(-1)).toBe('Bore 1: 8000');
  });

  it('counts internal work that was tapped after the stop as done while the machine stands', async () => {
    const at = await openStudy({ elements: [load, bore, inspect], lanes: 1, terms: noAllowance });
    for (const ms of [6_000, 8_000, 5_000]) tapAfter(at, ms);
    const { normalTimeMs } = summariseStudy(studyOf(at.bench).readings.map(({ row }) => row));
    expect(normalTimeMs).toBe(19_000);
  });

  it('cannot see internal work that the method lists behind the run', () => {
    expect(internalAfterStop([load, bore, inspect])).toEqual([2]);
    expect(internalAfterStop(cell)).toEqual([]);
  });
});
