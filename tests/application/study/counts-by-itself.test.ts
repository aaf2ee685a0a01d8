import { describe, expect, it } from 'vitest';
import {
  countsByItself,
  isBesideStandard,
  isOneMethod,
} from '../../../src/application/study/counts-by-itself';
import type { StudyOfPart } from '../../../src/application/study/read-studies-of-part';
import { foldStudy } from '../../../src/domain/study/fold-study';
import { everything, openStudy, tapAfter } from '../../domain/study/study-at-the-bench';

/** A study of the part that nothing speaks against. */
async function taken(change: Partial<StudyOfPart>): Promise<StudyOfPart> {
  const at = await openStudy();
  tapAfter(at, 2_000);
  const study = foldStudy(await everything(at.log));
  const { id, title } = study;
  const rows = study.readings.map(({ row }) => row);
  return {
    study,
    id,
    title,
    rows,
    operator: 'K7',
    day: '2026-03-02',
    methodRevision: 1,
    obstacles: [],
    ...change,
  };
}
const method = { revision: 1, writtenOn: '2026-03-01', elements: [], partsPerCycle: 1, conditions: '' };

describe('a study goes into a standard before anybody ticks it', () => {
  it('while none is issued, unless something speaks against it', async () => {
    expect(countsByItself(await taken({}), method, undefined)).toBe(true);
    expect(countsByItself(await taken({ obstacles: ['trend'] }), method, undefined)).toBe(false);
    expect(countsByItself(await taken({ methodRevision: 2 }), method, undefined)).toBe(false);
  });

  it('once one is issued only where that rests on it: a newer study moves no figure by itself', async () => {
    const issued = { studies: ['t:3'] };
    expect(countsByItself(await taken({ id: 't:3' }), method, issued)).toBe(true);
    expect(countsByItself(await taken({ id: 't:8' }), method, issued)).toBe(false);
    expect(isBesideStandard(await taken({ id: 't:8' }), issued)).toBe(true);
    expect(isBesideStandard(await taken({ id: 't:8' }), undefined)).toBe(false);
  });
});

describe('studies taken together', () => {
  it('are of one revision of the method, or of one and of tables that name none', () => {
    const of = (...revisions: (number | null)[]) =>
      isOneMethod(revisions.map((methodRevision) => ({ methodRevision })));
    expect([of(), of(2), of(2, 2), of(2, null), of(null, null)]).toEqual([true, true, true, true, true]);
    expect([of(1, 2), of(null, 2, 1)]).toEqual([false, false]);
  });
});
