import { describe, expect, it } from 'vitest';
import { beginForeign } from '../../../src/application/study/begin-foreign';
import { inHandOf, noteElement } from '../../../src/application/study/note-element';
import { openStudy, studyOf, tapAfter } from '../../domain/study/study-at-the-bench';

const remarks = (bench: Parameters<typeof studyOf>[0]) =>
  studyOf(bench).readings.map(({ row }) => [row.element, row.carried.note]);

describe('a remark that is written while the watch runs', () => {
  it('stands on what is in hand, and goes with it to its reading', async () => {
    const at = await openStudy();
    noteElement(at.bench, inHandOf(studyOf(at.bench)), ' cloth was dry ');
    expect(studyOf(at.bench).watch.note).toBe('cloth was dry');
    tapAfter(at, 3_000);
    expect(remarks(at.bench)).toEqual([['Load', 'cloth was dry']]);
  });

  it('stands on the element that it was begun for, though that has ended meanwhile', async () => {
    const at = await openStudy();
    const on = inHandOf(studyOf(at.bench));
    tapAfter(at, 3_000);
    noteElement(at.bench, on, 'cloth was dry');
    tapAfter(at, 3_000);
    expect(remarks(at.bench)).toEqual([
      ['Load', 'cloth was dry'],
      ['Run', ''],
    ]);
  });

  it('names a foreign element, during it and after it', async () => {
    const at = await openStudy();
    at.clock.pass(1_000);
    beginForeign(at.bench, at.clock.now());
    const on = inHandOf(studyOf(at.bench));
    noteElement(at.bench, on, 'phone');
    tapAfter(at, 2_000);
    noteElement(at.bench, on, 'phone of the shop');
    expect(remarks(at.bench)).toEqual([['phone of the shop', '']]);
  });
});
