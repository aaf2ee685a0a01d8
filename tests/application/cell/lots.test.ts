import { beforeEach, describe, expect, it } from 'vitest';
import { Bench } from '../../../src/application/bench';
import { readCellSettings, setCell } from '../../../src/application/cell/cell-settings';
import { lotArrives } from '../../../src/application/cell/lot-arrives';
import { readCellDays } from '../../../src/application/cell/read-cell-days';
import { releaseLot } from '../../../src/application/cell/release-lot';
import { scanLot } from '../../../src/application/cell/scan-lot';
import { undoLot } from '../../../src/application/cell/undo-lot';
import { firstSettings } from '../../../src/domain/cell/fold-cell-settings';
import { InMemoryRecordLog } from '../../../src/storage/in-memory-record-log';
import { FakeClock } from '../../support/fake-clock';

let clock: FakeClock;
let bench: Bench;
const MINUTE_MS = 60_000;
const lots = async () => (await readCellDays(bench)).lots;
const saved = () => new Promise((resolve) => setTimeout(resolve, 5));

beforeEach(async () => {
  clock = new FakeClock();
  bench = await Bench.open(new InMemoryRecordLog('tablet-1'), clock);
});

describe('lots', () => {
  it('arrive and are released with one call each, at the moment of it', async () => {
    await lotArrives(bench, 20);
    await saved();
    clock.pass(30 * MINUTE_MS);
    await releaseLot(bench, 8);
    await saved();
    const { stays, inside } = await lots();
    expect(stays).toMatchObject([{ parts: 8 }]);
    expect(stays[0]!.releasedWallMs - stays[0]!.arrivedWallMs).toBe(30 * MINUTE_MS);
    expect(inside).toMatchObject([{ parts: 12 }]);
  });

  it('of one day are in one stream, and the next day begins another', async () => {
    await lotArrives(bench, 20);
    await saved();
    await lotArrives(bench, 20);
    await saved();
    expect(await bench.log.readLatestStarts('lots', 9)).toHaveLength(1);
    clock.pass(24 * 60 * MINUTE_MS);
    await releaseLot(bench, 20);
    await saved();
    expect(await bench.log.readLatestStarts('lots', 9)).toHaveLength(2);
    expect((await lots()).inside).toMatchObject([{ parts: 20 }]);
    const [today] = await bench.log.readLatestStarts('lots', 1);
    expect(today!.fact).toMatchObject({ inside: [{ parts: 20 }, { parts: 20 }] });
  });

  it('are told apart by a scan: one that is inside leaves whole, any other comes', async () => {
    expect(await scanLot(bench, await lots(), ' R-7 ', 20)).toBe('arrived');
    await saved();
    expect(await scanLot(bench, await lots(), 'R-8', 5)).toBe('arrived');
    await saved();
    expect(await scanLot(bench, await lots(), 'R-7', 20)).toBe('released');
    await saved();
    expect((await lots()).inside).toMatchObject([{ lot: 'R-8', parts: 5 }]);
  });

  it('are there no more when the last move is taken back, and a second time takes the one before', async () => {
    await lotArrives(bench, 20);
    await saved();
    await releaseLot(bench, 8);
    await saved();
    undoLot(bench, await lots());
    await saved();
    expect((await lots()).inside).toMatchObject([{ parts: 20 }]);
    undoLot(bench, await lots());
    await saved();
    expect(await lots()).toMatchObject({ inside: [], stays: [], last: null });
  });

  it('hold whole parts', async () => {
    for (const parts of [0, -1, 1.5, Number.NaN]) {
      await expect(lotArrives(bench, parts)).rejects.toThrow('lotArrives requires whole parts');
      await expect(releaseLot(bench, parts)).rejects.toThrow('releaseLot requires whole parts');
    }
  });
});

describe('the settings of the cell', () => {
  it('are parts one by one until the shop says otherwise, and then the last that were set', async () => {
    expect(await readCellSettings(bench)).toEqual(firstSettings);
    setCell(bench, { ...firstSettings, arrivalLot: 20, refillAt: 3 });
    setCell(bench, { ...firstSettings, arrivalLot: 10, trolley: 4 });
    await saved();
    expect(await readCellSettings(bench)).toMatchObject({ arrivalLot: 10, refillAt: 0, trolley: 4 });
  });

  it('are refused when no cell could have them', () => {
    for (const change of [{ arrivalLot: 0 }, { refillAt: -1 }, { trolley: 2.5 }, { partsPerDay: 0 }]) {
      expect(() => setCell(bench, { ...firstSettings, ...change })).toThrow(/^setCell requires /);
    }
  });
});
