import { describe, expect, it } from 'vitest';
import { Bench } from '../../../src/application/bench';
import { readTurnsBetween } from '../../../src/application/review/read-turns-between';
import { readTurnsOfDay } from '../../../src/application/review/read-turns-of-day';
import { setCalendar } from '../../../src/application/shop/set-calendar';
import { endTurn } from '../../../src/application/turn/end-turn';
import { markPartDone } from '../../../src/application/turn/mark-part-done';
import { startTurn } from '../../../src/application/turn/start-turn';
import { InMemoryRecordLog } from '../../../src/storage/in-memory-record-log';
import { FakeClock } from '../../support/fake-clock';

const HOUR_MS = 3_600_000;
const partM = { part: 't:1', partCode: 'M', targetMs: 90_000 };

/** On Monday 2 March a turn from 22:00 to 23:00, and one from 00:30 to 01:30 in the same night. */
async function night(hasCalendar: boolean) {
  const clock = new FakeClock();
  const bench = await Bench.open(new InMemoryRecordLog('t'), clock);
  if (hasCalendar) {
    const shift = { name: 'night', weekdays: [1], fromMin: 1_320, toMin: 360, breaks: [] };
    setCalendar(bench, { shifts: [shift], exceptions: [] });
  }
  for (const waitMs of [15 * HOUR_MS, 1.5 * HOUR_MS]) {
    clock.pass(waitMs);
    startTurn(bench, 'K7', partM);
    clock.pass(HOUR_MS);
    markPartDone(bench, clock.now());
    endTurn(bench, clock.now());
  }
  await new Promise((resolve) => setTimeout(resolve, 200));
  return bench;
}

const madeOn = async (bench: Bench, day: string) =>
  (await readTurnsOfDay(bench, day)).reduce((sum, { turn }) => sum + turn.cycles.length, 0);
const made = async (bench: Bench) => [await madeOn(bench, '2026-03-02'), await madeOn(bench, '2026-03-03')];

describe('a night shift', () => {
  it('is one day with all that was made in it, and two without a calendar', async () => {
    expect(await made(await night(true))).toEqual([2, 0]);
    expect(await made(await night(false))).toEqual([1, 1]);
  });

  it('is one day wherever turns are looked up by day', async () => {
    const bench = await night(true);
    expect(await readTurnsOfDay(bench, '2026-03-02')).toHaveLength(2);
    expect(await readTurnsOfDay(bench, '2026-03-03')).toEqual([]);
    expect(await readTurnsBetween(bench, { from: '2026-03-03', to: '2026-03-04' })).toEqual([]);
  });

  it('stays one day when the shop drops its night shift afterwards', async () => {
    const bench = await night(true);
    setCalendar(bench, { shifts: [], exceptions: [] });
    expect(await made(bench)).toEqual([2, 0]);
  });
});
