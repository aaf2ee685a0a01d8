import { describe, expect, it } from 'vitest';
import { Bench } from '../../../src/application/bench';
import { definePart } from '../../../src/application/shop/define-part';
import { issueStandard } from '../../../src/application/shop/issue-standard';
import { readStandards } from '../../../src/application/shop/read-standards';
import { sizePart } from '../../../src/application/shop/size-part';
import { standardInForce, standardToCome } from '../../../src/domain/shop/fold-standards';
import { InMemoryRecordLog } from '../../../src/storage/in-memory-record-log';
import { FakeClock } from '../../support/fake-clock';

const standard = {
  standardTimeMs: 90_960,
  normalTimeMs: 80_000,
  terms: { allowancePct: 14, basis: 'normal_time', machineAllowancePct: 4 },
  methodRevision: 1,
  conditions: '',
  studies: ['t:7'],
  cycles: 30,
  operators: ['K7'],
  days: ['2026-03-02'],
  uncertainty: 0.06,
  inForceOn: '2026-03-09',
  checkBy: '2027-03-09',
  issuedBy: 'E1',
} as const;

async function shop() {
  const bench = await Bench.open(new InMemoryRecordLog('t'), new FakeClock());
  return { bench, part: definePart(bench, 'M', '') };
}
const settled = () => new Promise((resolve) => setTimeout(resolve, 0));

describe('standards', () => {
  it('are revisions of their part, with the day they were issued; an earlier one stays as it was', async () => {
    const { bench, part } = await shop();
    issueStandard(bench, part, standard);
    issueStandard(bench, part, { ...standard, standardTimeMs: 88_000, inForceOn: '2026-04-01' });
    await settled();
    const { standards } = (await readStandards(bench)).get(part)!;
    expect(
      standards.map(({ revision, standardTimeMs, issuedOn }) => [revision, standardTimeMs, issuedOn]),
    ).toEqual([
      [1, 90_960, '2026-03-02'],
      [2, 88_000, '2026-03-02'],
    ]);
  });

  it('hold from their day on, and not before', async () => {
    const { bench, part } = await shop();
    issueStandard(bench, part, standard);
    issueStandard(bench, part, { ...standard, inForceOn: '2026-04-01' });
    await settled();
    const { standards } = (await readStandards(bench)).get(part)!;
    const inForce = (day: string) => standardInForce(standards, day)?.revision ?? null;
    expect(['2026-03-08', '2026-03-09', '2026-03-31', '2026-04-01'].map(inForce)).toEqual([null, 1, 1, 2]);
  });

  it('to come are known by their day until they hold, unless a later revision holds before them', async () => {
    const { bench, part } = await shop();
    issueStandard(bench, part, standard);
    issueStandard(bench, part, { ...standard, inForceOn: '2026-05-01' });
    issueStandard(bench, part, { ...standard, inForceOn: '2026-04-01' });
    await settled();
    const { standards } = (await readStandards(bench)).get(part)!;
    const toCome = (day: string) => standardToCome(standards, day)?.revision ?? null;
    expect(['2026-03-08', '2026-03-31', '2026-04-01', '2026-05-01'].map(toCome)).toEqual([1, 3, null, null]);
  });

  it('are refused without a study, without a later day for the check, and without whoever issues them', async () => {
    const { bench, part } = await shop();
    expect(() => issueStandard(bench, part, { ...standard, studies: [] })).toThrow('of at least one study');
    expect(() => issueStandard(bench, part, { ...standard, checkBy: '2026-03-09' })).toThrow(
      'before the day of its check',
    );
    expect(() => issueStandard(bench, part, { ...standard, inForceOn: 'soon' })).toThrow(
      'a day from which it holds',
    );
    expect(() => issueStandard(bench, part, { ...standard, issuedBy: ' ' })).toThrow('whoever issues it');
    expect(() => issueStandard(bench, 't:99', standard)).toThrow('a part of the shop');
  });
});

describe('sizes of a part', () => {
  it('are the last ones said', async () => {
    const { bench, part } = await shop();
    sizePart(bench, part, [{ driver: 'perimeter, m', value: 3.4 }]);
    sizePart(bench, part, [{ driver: 'perimeter, m', value: 3.512 }]);
    await settled();
    expect((await readStandards(bench)).get(part)!.sizes).toEqual([{ driver: 'perimeter, m', value: 3.512 }]);
  });

  it('stay where another size is said beside them', async () => {
    const { bench, part } = await shop();
    sizePart(bench, part, [{ driver: 'perimeter, m', value: 3.4 }]);
    sizePart(bench, part, [{ driver: 'holes', value: 12 }]);
    await settled();
    expect((await readStandards(bench)).get(part)!.sizes).toEqual([
      { driver: 'perimeter, m', value: 3.4 },
      { driver: 'holes', value: 12 },
    ]);
  });

  it('are above nothing', async () => {
    const { bench, part } = await shop();
    expect(() => sizePart(bench, part, [{ driver: 'perimeter, m', value: 0 }])).toThrow('sizes above 0');
  });
});
