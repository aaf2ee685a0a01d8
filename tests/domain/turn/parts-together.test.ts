import { describe, expect, it } from 'vitest';
import { partInHand } from '../../../src/application/turn/part-in-hand';
import { attendedSpans } from '../../../src/domain/day/attended-spans';
import { partAccounts } from '../../../src/domain/day/part-account';
import { partsOfDay } from '../../../src/domain/day/part-of-day';
import type { Part } from '../../../src/domain/shop/shop';
import { averageOfPart } from '../../../src/domain/turn/average-of-part';
import { foldTurn } from '../../../src/domain/turn/fold-turn';
import { ledgerTotals } from '../../../src/domain/turn/ledger-totals';
import { pace } from '../../../src/domain/turn/pace';
import { stampAt } from '../../support/records';
import { change, cycleIs, done, judged, type Line, partL, partM, turnRecords } from './turn-script';

const pair = { ...partM, partsPerTap: 2 };
const fold = (lines: readonly Line[], inHand = pair) => foldTurn(turnRecords(lines, inHand));
const pairs = (...ats: number[]): Line[] => ats.map((at) => [at, done(pair)]);

describe('two parts in one fixture', () => {
  it('count two for each tap, with half its time each, and every millisecond is in one of them', () => {
    const turn = fold(pairs(160.001, 320));
    expect(turn.cycles.map(({ key, netMs, together }) => [key, netMs, together])).toEqual([
      ['t:11/1', 80_000, 2],
      ['t:11', 80_001, 2],
      ['t:12/1', 79_999, 2],
      ['t:12', 80_000, 2],
    ]);
    expect(ledgerTotals(turn.ledger).cycle).toBe(320_000);
  });

  it('are measured by the target of each, and the part in hand by that of both', () => {
    // Target 90 s a part: 20 s ahead after a pair in 160 s. The next pair may take 180 s.
    const ahead = (atS: number) => pace(fold(pairs(160)), stampAt(atS * 1_000)).aheadMs;
    expect([ahead(160), ahead(340), ahead(345)]).toEqual([20_000, 20_000, 15_000]);
  });

  it('are never averaged with single ones of the same part', () => {
    const turn = fold([...pairs(100, 200), [200, change(partM)], [280, done()], [360, done()]]);
    expect(
      partsOfDay(turn.cycles).map(({ part, partCode, n, meanMs }) => [part, partCode, n, meanMs]),
    ).toEqual([
      ['t:1', 'M', 2, 80_000],
      ['t:1 ×2', 'M ×2', 4, 50_000],
    ]);
    const accounts = partAccounts([
      { turn, absorbedMs: new Map(), breaks: [], spans: attendedSpans(turn, []) },
    ]);
    expect(accounts.map(({ partCode, n, netMs }) => [partCode, n, netMs])).toEqual([
      ['M', 2, 160_000],
      ['M ×2', 4, 200_000],
    ]);
    expect(averageOfPart(turn, partM.part)).toMatchObject({ n: 2, meanMs: 80_000 });
    expect(averageOfPart(fold(pairs(100, 200)), partM.part)).toMatchObject({ n: 4, meanMs: 50_000 });
  });

  it('ask once about a missed tap, and are four parts when it was one', () => {
    const six = pairs(160, 320, 480, 640, 800, 1_120);
    const asked = fold(six);
    expect(asked.doubts).toEqual([
      {
        kind: 'two-parts',
        key: 't:16',
        fromMs: 800_000,
        toMs: 1_120_000,
        suggestion: { eachMs: 80_000, together: 2 },
      },
    ]);
    expect(asked.cycles.filter(({ isCounted }) => isCounted)).toHaveLength(10);
    const said = fold([...six, [1_121, cycleIs(16, 'two-parts')]]);
    expect(said.cycles.slice(10).map(({ key, netMs, isCounted }) => [key, netMs, isCounted])).toEqual([
      ['t:16/1', 80_000, true],
      ['t:16/2', 80_000, true],
      ['t:16/3', 80_000, true],
      ['t:16', 80_000, true],
    ]);
  });

  it('are judged one by one, and recoded as a tap with what the other part has', () => {
    const other = { kind: 'part-recoded', partDone: ['t:11'], ...partL, by: 'F1', why: 'x' } as const;
    const turn = fold([...pairs(160), [161, judged(11, 'scrap')]]);
    expect(turn.cycles.map(({ outcome }) => outcome)).toEqual(['good', 'scrap']);
    expect(fold([...pairs(160), [161, other]]).cycles).toMatchObject([
      { part: 't:2', netMs: 160_000, together: 1 },
    ]);
  });

  it('come from the newest method of the part, and from none', () => {
    const part: Part = {
      id: 't:1',
      code: 'M',
      name: '',
      retired: false,
      targetMs: 90_000,
      targetSource: null,
      targetStudy: null,
      tapping: 'each-part',
      methods: [],
    };
    const method = (partsPerCycle: number) => ({
      revision: 1,
      elements: [],
      partsPerCycle,
      conditions: '',
      writtenOn: '2026-03-02',
    });
    expect(partInHand(part)).toEqual(partM);
    expect(partInHand({ ...part, methods: [method(4), method(2)] })).toEqual(pair);
    expect(partInHand({ ...part, methods: [method(2), method(1)] })).toEqual(partM);
  });
});
