import { describe, expect, it } from 'vitest';
import { definePart } from '../../../src/application/shop/define-part';
import { checkClock } from '../../../src/application/study/check-clock';
import { endStudy } from '../../../src/application/study/end-study';
import { importStudies } from '../../../src/application/study/import-studies';
import { readStudiesOfPart } from '../../../src/application/study/read-studies-of-part';
import { setFrequency } from '../../../src/application/study/set-frequency';
import { fixtureRows } from '../../domain/study/demo-rows';
import { fourElements, openStudy, settled, studyOf, tapAfter } from '../../domain/study/study-at-the-bench';

type At = Awaited<ReturnType<typeof openStudy>>;

function partOf({ bench }: At) {
  const { shop } = bench;
  return shop.value.parts.find(({ code }) => code === 'M')!;
}

describe('the studies of a part', () => {
  it('are those that ended, of this part by name or by the code of a table, newest first', async () => {
    const at = await openStudy({ elements: fourElements.slice(0, 3) });
    for (const ms of [2_000, 5_000, 3_000]) tapAfter(at, ms);
    const part = definePart(at.bench, 'M', '');
    await settled();
    expect(await readStudiesOfPart(at.bench, partOf(at))).toEqual([]);
    endStudy(at.bench, at.clock.now());
    at.clock.pass(60_000);
    importStudies(at.bench, 'k7.csv', fixtureRows());
    await settled();
    // The timed one was begun for a part of another record.
    const found = await readStudiesOfPart(at.bench, partOf(at));
    expect(part).not.toBe(studyOf(at.bench).heading!.part);
    expect(found.map(({ title, operator, obstacles }) => [title, operator, obstacles])).toEqual([
      ['WD-1310, after, K7', 'K7', []],
    ]);
  });

  it('say what speaks against a standard: an element never seen, a clock check that failed', async () => {
    const at = await openStudy();
    const part = definePart(at.bench, 'M', '');
    for (const ms of [2_000, 5_000, 3_000]) tapAfter(at, ms);
    endStudy(at.bench, at.clock.now());
    checkClock(at.bench, studyOf(at.bench), { elapsedMs: 60_000, beforeMs: 0, afterMs: 0 });
    await settled();
    const own = { ...partOf(at), id: studyOf(at.bench).heading!.part };
    const [study] = await readStudiesOfPart(at.bench, own);
    expect(part).toBeTruthy();
    expect(study!.obstacles).toEqual(['clock', 'unseen']);
  });

  it('know the revision of the method that a table names', async () => {
    const at = await openStudy();
    definePart(at.bench, 'M', '');
    const named = (method_revision: string) =>
      importStudies(
        at.bench,
        'k7.csv',
        fixtureRows().map((row) => ({ ...row, carried: { ...row.carried, method_revision } })),
      );
    named('3');
    named('the new one');
    await settled();
    const found = await readStudiesOfPart(at.bench, partOf(at));
    expect(found.map(({ methodRevision }) => methodRevision)).toEqual([null, 3]);
  });

  it('name the elements whose frequency was only seen', async () => {
    const at = await openStudy();
    definePart(at.bench, 'D', '');
    const [id] = importStudies(at.bench, 'k7.csv', fixtureRows());
    definePart(at.bench, 'M', '');
    await settled();
    const [study] = await readStudiesOfPart(at.bench, partOf(at));
    expect([study!.id, study!.seen]).toEqual([id, []]);
    const { elementNo } = fixtureRows().find(({ element }) => element === 'O1 scraper blade')!;
    setFrequency(at.bench, study!.study, elementNo, { unitsPerOccurrence: 30, source: 'observed' });
    await settled();
    const [changed] = await readStudiesOfPart(at.bench, partOf(at));
    expect(changed!.seen).toEqual(['O1 scraper blade']);
    expect(changed!.rows.find(({ element }) => element === 'O1 scraper blade')!.unitsPerOccurrence).toBe(30);
  });
});
