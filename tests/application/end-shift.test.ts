import { describe, expect, it } from 'vitest';
import { Bench } from '../../src/application/bench';
import { endShift } from '../../src/application/turn/end-shift';
import { startTurn } from '../../src/application/turn/start-turn';
import { localIso } from '../../src/domain/records/local-iso';
import { InMemoryRecordLog } from '../../src/storage/in-memory-record-log';
import { FakeClock } from '../support/fake-clock';

const partM = { part: 't:1', partCode: 'M', targetMs: 90_000 };

async function turnOfAnHour() {
  const clock = new FakeClock();
  const bench = await Bench.open(new InMemoryRecordLog('t'), clock);
  startTurn(bench, 'K7', partM);
  clock.pass(3_600_000);
  const now = clock.now();
  const [hours, minutes] = localIso(now.wallMs, now.offsetMin).slice(11, 16).split(':').map(Number);
  return { bench, minuteNow: hours! * 60 + minutes! };
}

describe('the end of a shift that is said at the station', () => {
  it('is the next time that the clock shows it, on the turn’s own line', async () => {
    const { bench, minuteNow } = await turnOfAnHour();
    endShift(bench, (minuteNow + 90) % 1_440);
    const { endsAtMs } = bench.turn.value!.planned;
    expect(Math.abs(endsAtMs! - 3_600_000 - 90 * 60_000)).toBeLessThan(60_000);
  });

  it('lies on the next day when the clock has shown it already', async () => {
    const { bench, minuteNow } = await turnOfAnHour();
    endShift(bench, (minuteNow + 1_439) % 1_440);
    const { endsAtMs } = bench.turn.value!.planned;
    expect(Math.abs(endsAtMs! - 3_600_000 - 1_439 * 60_000)).toBeLessThan(60_000);
  });

  it('leaves the planned breaks where they were', async () => {
    const { bench, minuteNow } = await turnOfAnHour();
    const { wallMs } = bench.turn.value!.startedAt;
    const lunch = { fromWallMs: wallMs + 7_200_000, toWallMs: wallMs + 9_000_000 };
    bench.record(bench.turn.value!.id, [{ kind: 'shift-planned', breaks: [lunch], endsWallMs: null }]);
    endShift(bench, (minuteNow + 300) % 1_440);
    expect(bench.turn.value!.planned.breaks).toEqual([{ fromMs: 7_200_000, toMs: 9_000_000 }]);
  });

  it('refuses what is no minute of a day', async () => {
    const { bench } = await turnOfAnHour();
    expect(() => endShift(bench, 1_440)).toThrow('endShift requires a whole minute of a day');
  });
});
