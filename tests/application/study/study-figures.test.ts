import { describe, expect, it } from 'vitest';
import { endStudy } from '../../../src/application/study/end-study';
import { holdWatch } from '../../../src/application/study/hold-watch';
import { importStudies } from '../../../src/application/study/import-studies';
import { listStudies } from '../../../src/application/study/list-studies';
import { readStudyFigures } from '../../../src/application/study/read-study-figures';
import { fixtureRows } from '../../domain/study/demo-rows';
import { fourElements, openStudy, settled, studyOf, tapAfter } from '../../domain/study/study-at-the-bench';

describe('the list of studies', () => {
  it('tells cycles and the standard time of a whole method: 2 s and the longer of 3 and 5 s, 15 % on hand work', async () => {
    const at = await openStudy({ elements: fourElements.slice(0, 3) });
    for (const ms of [2_000, 5_000, 3_000, 2_000]) tapAfter(at, ms);
    endStudy(at.bench, at.clock.now());
    await settled();
    const [listed] = await listStudies(at.bench);
    expect(listed).toMatchObject({ partCode: 'M', operator: 'K7' });
    // 2 · 1.15 + max(3 · 1.15, 5)
    expect(await readStudyFigures(at.bench, listed!.id)).toEqual({
      cycles: 2,
      wholeCycles: 1,
      obstacle: null,
      standardTimeMs: 7_300,
      isOpen: false,
    });
  });

  it('tells of a study on paper the day that its sheet has, and that it was typed in', async () => {
    const { bench } = await openStudy();
    const [row] = fixtureRows();
    const rowsOf = (day: string) => [{ ...row!, carried: { ...row!.carried, started_at: day } }];
    importStudies(bench, 'typed', rowsOf('2026-02-20'), fourElements);
    importStudies(bench, 'k7.csv', rowsOf('2026-02-21'));
    await settled();
    const listed = await listStudies(bench);
    expect(listed.map(({ source, toldStart }) => [source, toldStart])).toEqual(
      expect.arrayContaining([
        ['paper', '2026-02-20'],
        ['table', '2026-02-21'],
        ['timed', ''],
      ]),
    );
  });

  it('tells that a study is not usable where time of it is unaccounted', async () => {
    const at = await openStudy({ elements: fourElements.slice(0, 3), timing: 'snapback' });
    for (const ms of [2_000, 5_000, 3_000]) tapAfter(at, ms);
    holdWatch(at.bench, at.clock.now());
    at.clock.pass(60_000);
    tapAfter(at, 0);
    endStudy(at.bench, at.clock.now());
    await settled();
    expect((await readStudyFigures(at.bench, studyOf(at.bench).id))?.obstacle).toBe('clock');
  });

  it('tells no standard time while an element of the method was never seen', async () => {
    const at = await openStudy();
    for (const ms of [2_000, 5_000, 3_000]) tapAfter(at, ms);
    await settled();
    const { id } = studyOf(at.bench);
    expect(await readStudyFigures(at.bench, id)).toMatchObject({
      cycles: 1,
      standardTimeMs: null,
      isOpen: true,
    });
  });
});
