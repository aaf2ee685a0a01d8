import { describe, expect, it } from 'vitest';
import { beginForeign } from '../../../src/application/study/begin-foreign';
import { beginOccasional } from '../../../src/application/study/begin-occasional';
import { endElement } from '../../../src/application/study/end-element';
import { endStudy } from '../../../src/application/study/end-study';
import { missBreakPoint } from '../../../src/application/study/miss-break-point';
import { undoLastReading } from '../../../src/application/study/undo-last-reading';
import { element, everything, lines, openStudy, studyOf, tapAfter } from './study-at-the-bench';

// Times are of our own making; each expectation is a difference of the taps above it.

describe('continuous timing', () => {
  it('reads an element as the difference of the running watch at two break points', async () => {
    const at = await openStudy();
    for (const ms of [2_000, 5_000, 3_000, 2_200]) tapAfter(at, ms);
    expect(lines(studyOf(at.bench))).toEqual([
      'Load 1: 2000',
      'Run 1: 5000',
      'Clean 1: 3000',
      'Load 2: 2200',
    ]);
    expect(studyOf(at.bench).watch).toMatchObject({ cycle: 2, elementIndex: 1, beganAtMs: 12_200 });
  });

  it('carries the head of the sheet on every reading, with the moment the study began', async () => {
    const at = await openStudy({ conditions: 'P180' });
    tapAfter(at, 2_000);
    tapAfter(at, 5_000);
    const carried = studyOf(at.bench).readings.map(({ row }) => row.carried);
    expect(carried[0]).toEqual(carried[1]);
    // The clocks of these tests begin on 2 March 2026 at 07:00, one hour east of UTC.
    expect(carried[0]).toEqual({
      part: 'M',
      operator: 'K7',
      observer: 'E1',
      method_revision: '1',
      conditions: 'P180',
      started_at: '2026-03-02T07:00:00.000+01:00',
      time_zone: 'Europe/Berlin',
      note: '',
      clock_flag: '',
    });
  });

  it('takes the time of a foreign element out of the element it fell into, and keeps both', async () => {
    const at = await openStudy();
    at.clock.pass(1_000);
    beginForeign(at.bench, at.clock.now());
    tapAfter(at, 700);
    tapAfter(at, 500);
    expect(lines(studyOf(at.bench))).toEqual(['Foreign element 1: 700', 'Load 1: 1500']);
  });

  it('takes two foreign elements out of one element', async () => {
    const at = await openStudy();
    for (const ms of [700, 400]) {
      at.clock.pass(1_000);
      beginForeign(at.bench, at.clock.now());
      tapAfter(at, ms);
    }
    tapAfter(at, 500);
    expect(lines(studyOf(at.bench)).at(-1)).toBe('Load 1: 2500');
  });

  it('times an occasional element apart and comes back to the element it fell into', async () => {
    const at = await openStudy();
    at.clock.pass(1_000);
    beginOccasional(at.bench, at.clock.now(), 4);
    expect(studyOf(at.bench).watch.aside).toEqual({ elementIndex: 3, beganAtMs: 1_000, note: '' });
    tapAfter(at, 4_000, 90);
    tapAfter(at, 500);
    expect(lines(studyOf(at.bench))).toEqual(['Blade 1: 4000', 'Load 1: 1500']);
    expect(studyOf(at.bench).readings[0]!.row).toMatchObject({
      elementClass: 'occasional',
      unitsPerOccurrence: 5,
      ratingPct: 90,
    });
  });

  it('begins nothing apart while something is timed apart', async () => {
    const at = await openStudy();
    beginForeign(at.bench, at.clock.now());
    beginOccasional(at.bench, at.clock.now(), 4);
    missBreakPoint(at.bench);
    expect(studyOf(at.bench).watch).toMatchObject({ aside: { elementIndex: null }, merged: [] });
    tapAfter(at, 100);
    beginOccasional(at.bench, at.clock.now(), 4);
    beginForeign(at.bench, at.clock.now());
    expect(studyOf(at.bench).watch.aside).toMatchObject({ elementIndex: 3 });
  });

  it('refuses to time a repetitive element apart', async () => {
    const { bench, clock } = await openStudy();
    expect(() => beginOccasional(bench, clock.now(), 1)).toThrow(
      'beginOccasional requires an occasional element of the method',
    );
  });

  it('leaves both elements of a missed break point out, and keeps the cycle', async () => {
    const at = await openStudy();
    missBreakPoint(at.bench);
    tapAfter(at, 7_000);
    tapAfter(at, 3_000);
    tapAfter(at, 2_000);
    expect(lines(studyOf(at.bench))).toEqual([
      'Load 1: – (missed-break-point)',
      'Run 1: 7000 (missed-break-point)',
      'Clean 1: 3000',
      'Load 2: 2000',
    ]);
  });

  it('merges three elements when two break points in a row are missed', async () => {
    const at = await openStudy();
    missBreakPoint(at.bench);
    missBreakPoint(at.bench);
    tapAfter(at, 9_000);
    expect(studyOf(at.bench).readings.map(({ row }) => row.observedMs)).toEqual([null, null, 9_000]);
    expect(studyOf(at.bench).readings.every(({ isMerged }) => isMerged)).toBe(true);
  });

  it('goes back to the element when its break point is undone, and reads it whole at the next tap', async () => {
    const at = await openStudy();
    tapAfter(at, 2_000);
    undoLastReading(at.bench);
    expect(studyOf(at.bench).watch).toMatchObject({ elementIndex: 0, beganAtMs: 0 });
    tapAfter(at, 1_000);
    expect(lines(studyOf(at.bench))).toEqual(['Load 1: 3000']);
  });

  it('undoes the beginning of a foreign element, a missed break point, and several taps in a row', async () => {
    const at = await openStudy();
    tapAfter(at, 2_000);
    missBreakPoint(at.bench);
    beginForeign(at.bench, at.clock.now());
    undoLastReading(at.bench);
    expect(studyOf(at.bench).watch.aside).toBeNull();
    undoLastReading(at.bench);
    expect(studyOf(at.bench).watch).toMatchObject({ elementIndex: 1, merged: [] });
    undoLastReading(at.bench);
    undoLastReading(at.bench);
    expect(studyOf(at.bench)).toMatchObject({ undoable: null, readings: [], watch: { elementIndex: 0 } });
  });

  it('keeps an undone tap in the log', async () => {
    const at = await openStudy();
    tapAfter(at, 2_000);
    undoLastReading(at.bench);
    const kinds = (await everything(at.log)).map(({ fact }) => fact.kind);
    expect(kinds).toEqual(['study-started', 'element-ended', 'undone']);
  });

  it('makes no reading of an element, or of something apart, that was not finished at the end', async () => {
    const at = await openStudy();
    tapAfter(at, 2_000);
    at.clock.pass(1_000);
    beginForeign(at.bench, at.clock.now());
    at.clock.pass(1_000);
    endStudy(at.bench, at.clock.now());
    expect(studyOf(at.bench).status).toBe('ended');
    expect(lines(studyOf(at.bench))).toEqual(['Load 1: 2000']);
  });

  it('takes no tap after the end', async () => {
    const at = await openStudy();
    tapAfter(at, 2_000);
    endStudy(at.bench, at.clock.now());
    tapAfter(at, 1_000);
    undoLastReading(at.bench);
    endStudy(at.bench, at.clock.now());
    expect(lines(studyOf(at.bench))).toEqual(['Load 1: 2000']);
    const kinds = (await everything(at.log)).map(({ fact }) => fact.kind);
    expect(kinds).toEqual(['study-started', 'element-ended', 'study-ended']);
  });

  it('locks the rating of machine work at 100, in the cycle and timed apart', async () => {
    const apart = element('Dress wheel', { elementClass: 'occasional', work: 'machine' });
    const at = await openStudy({ elements: [element('Load'), element('Run', { work: 'machine' }), apart] });
    beginOccasional(at.bench, at.clock.now(), 3);
    tapAfter(at, 3_000, 115);
    tapAfter(at, 2_000, 115);
    tapAfter(at, 4_000, 115);
    expect(studyOf(at.bench).readings.map(({ row }) => [row.element, row.ratingPct])).toEqual([
      ['Dress wheel', 100],
      ['Load', 115],
      ['Run', 100],
    ]);
  });

  it('rates occasional hand work even while the machine runs', async () => {
    const at = await openStudy();
    tapAfter(at, 2_000);
    beginOccasional(at.bench, at.clock.now(), 4);
    tapAfter(at, 3_000, 85);
    expect(studyOf(at.bench).readings.at(-1)!.row).toMatchObject({ element: 'Blade', ratingPct: 85 });
  });

  it('refuses a rating that judges no pace', async () => {
    const { bench, clock } = await openStudy();
    for (const rating of [0, -5, 205, Number.NaN]) {
      expect(() => endElement(bench, clock.now(), rating)).toThrow(
        'endElement requires a rating above 0 and of at most 200',
      );
    }
  });
});
