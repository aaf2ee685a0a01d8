import { describe, expect, it } from 'vitest';
import { Bench } from '../../../src/application/bench';
import { definePart } from '../../../src/application/shop/define-part';
import { reviseMethod } from '../../../src/application/shop/revise-method';
import { importStudies } from '../../../src/application/study/import-studies';
import { isMethodUnused } from '../../../src/application/study/is-method-unused';
import { startStudy } from '../../../src/application/study/start-study';
import { InMemoryRecordLog } from '../../../src/storage/in-memory-record-log';
import {
  fourElements,
  heading,
  openStudy,
  settled,
  studyOf,
  tapAfter,
} from '../../domain/study/study-at-the-bench';
import { FakeClock } from '../../support/fake-clock';

async function shopWithMethod() {
  const clock = new FakeClock();
  const bench = await Bench.open(new InMemoryRecordLog('t'), clock);
  const id = definePart(bench, 'M', '');
  reviseMethod(bench, id, fourElements);
  const part = () => bench.shop.value.parts.find((one) => one.id === id)!;
  return { bench, clock, id, part };
}

describe('a method that is written again', () => {
  it('keeps its number while nothing was timed under it', async () => {
    const { bench, id, part } = await shopWithMethod();
    expect(await isMethodUnused(bench, part())).toBe(true);
    reviseMethod(bench, id, fourElements, { conditions: 'feed: 70 %', inPlace: true });
    expect(part().methods).toMatchObject([{ revision: 1, conditions: 'feed: 70 %' }]);
    reviseMethod(bench, id, fourElements);
    expect(part().methods.map(({ revision }) => revision)).toEqual([1, 2]);
  });

  it('is used from the first tap of a study on', async () => {
    const { bench, clock, id, part } = await shopWithMethod();
    startStudy(bench, heading({ part: id }), clock.now());
    await settled();
    expect(await isMethodUnused(bench, part())).toBe(false);
  });

  it('is used by a study that was typed in from paper', async () => {
    const at = await openStudy();
    for (const ms of [2_000, 5_000, 3_000]) tapAfter(at, ms);
    const { bench, part } = await shopWithMethod();
    importStudies(
      bench,
      'paper',
      studyOf(at.bench).readings.map(({ row }) => row),
      fourElements,
    );
    await settled();
    expect(await isMethodUnused(bench, part())).toBe(false);
  });

  it('is not asked after the day it was written on, when another tablet may have used it', async () => {
    const { bench, clock, part } = await shopWithMethod();
    clock.pass(24 * 3_600_000);
    expect(await isMethodUnused(bench, part())).toBe(false);
  });
});
