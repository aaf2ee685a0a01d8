import { describe, expect, it } from 'vitest';
import { beginForeign } from '../../../src/application/study/begin-foreign';
import { missBreakPoint } from '../../../src/application/study/miss-break-point';
import { noteInHand } from '../../../src/application/study/note-in-hand';
import { noteReading } from '../../../src/application/study/note-reading';
import { rateReading } from '../../../src/application/study/rate-reading';
import { justEnded } from '../../../src/domain/study/just-ended';
import { lastRateable } from '../../../src/domain/study/last-rateable';
import { lines, openStudy, studyOf, tapAfter } from './study-at-the-bench';

describe('a note', () => {
  it('names the foreign element in hand, and leaves the element around it without one', async () => {
    const at = await openStudy();
    at.clock.pass(1_000);
    beginForeign(at.bench, at.clock.now());
    noteInHand(at.bench, 'talk');
    tapAfter(at, 700);
    tapAfter(at, 500);
    expect(lines(studyOf(at.bench))).toEqual(['talk 1: 700', 'Load 1: 1500']);
    expect(studyOf(at.bench).readings.map(({ row }) => row.carried.note)).toEqual(['', '']);
  });

  it('renames a foreign element afterwards, and stands beside any other reading', async () => {
    const at = await openStudy();
    beginForeign(at.bench, at.clock.now());
    tapAfter(at, 700);
    tapAfter(at, 500);
    const [foreign, load] = studyOf(at.bench).readings;
    noteReading(at.bench, studyOf(at.bench), foreign!.id, ' dropped cloth ');
    noteReading(at.bench, studyOf(at.bench), load!.id, 'new box');
    expect(studyOf(at.bench).readings.map(({ row }) => [row.element, row.carried.note])).toEqual([
      ['dropped cloth', ''],
      ['Load', 'new box'],
    ]);
  });

  it('never makes a foreign element one of the job, whatever it is called', async () => {
    const at = await openStudy();
    beginForeign(at.bench, at.clock.now());
    noteInHand(at.bench, 'Load');
    tapAfter(at, 700);
    expect(studyOf(at.bench).readings[0]!.row).toMatchObject({
      element: 'Foreign element: Load',
      elementClass: 'foreign',
    });
  });

  it('on the element in hand is on its reading, and not on the next', async () => {
    const at = await openStudy();
    noteInHand(at.bench, 'burr');
    tapAfter(at, 2_000);
    tapAfter(at, 5_000);
    expect(studyOf(at.bench).readings.map(({ row }) => row.carried.note)).toEqual(['burr', '']);
  });
});

describe('a late rating', () => {
  it('is for the last element a person governs, also while the machine is in hand', async () => {
    const at = await openStudy();
    tapAfter(at, 2_000);
    const late = lastRateable(studyOf(at.bench).readings)!;
    expect(late.row.element).toBe('Load');
    rateReading(at.bench, studyOf(at.bench), late.id, 115);
    tapAfter(at, 5_000);
    expect(studyOf(at.bench).readings.map(({ row }) => row.ratingPct)).toEqual([115, 100]);
    expect(lastRateable(studyOf(at.bench).readings)!.row.element).toBe('Load');
  });

  it('given while something foreign is timed, or after a missed break point, is not for what ended before', async () => {
    const at = await openStudy();
    tapAfter(at, 2_000);
    expect(justEnded(studyOf(at.bench))!.row.element).toBe('Load');
    beginForeign(at.bench, at.clock.now());
    expect(justEnded(studyOf(at.bench))).toBeNull();
    tapAfter(at, 1_000);
    expect(justEnded(studyOf(at.bench))!.row.element).toBe('Load');
    missBreakPoint(at.bench);
    expect(justEnded(studyOf(at.bench))).toBeNull();
  });

  it('is for nothing whose break point was missed', async () => {
    const at = await openStudy();
    missBreakPoint(at.bench);
    tapAfter(at, 7_000);
    expect(lastRateable(studyOf(at.bench).readings)).toBeNull();
  });
});

describe('what Undo would take back', () => {
  it('is named: the tap and the element it was about', async () => {
    const at = await openStudy();
    const undoable = () => {
      const { undoable: tap } = studyOf(at.bench);
      return tap && `${tap.kind} ${tap.element}`;
    };
    expect(undoable()).toBeNull();
    tapAfter(at, 2_000);
    expect(undoable()).toBe('element-ended Load');
    missBreakPoint(at.bench);
    expect(undoable()).toBe('break-point-missed Run');
    beginForeign(at.bench, at.clock.now());
    expect(undoable()).toBe('foreign-began ');
  });
});
