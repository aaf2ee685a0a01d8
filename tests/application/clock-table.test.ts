import { describe, expect, it } from 'vitest';
import { Bench } from '../../src/application/bench';
import { markPartDone } from '../../src/application/turn/mark-part-done';
import { startTurn } from '../../src/application/turn/start-turn';
import { ledgerTotals } from '../../src/domain/turn/ledger-totals';
import { InMemoryRecordLog } from '../../src/storage/in-memory-record-log';
import { FakeClock } from '../support/fake-clock';

const MINUTE = 60_000;
const HOUR = 60 * MINUTE;

/** Half a minute of work, then it happens, then half a minute of work and a part done. */
async function turnThrough(happens: (clock: FakeClock) => void) {
  const log = new InMemoryRecordLog('t');
  const clock = new FakeClock();
  const bench = await Bench.open(log, clock);
  startTurn(bench, 'K7', { part: 't:1', partCode: 'M', targetMs: 90_000 });
  clock.pass(30_000);
  happens(clock);
  clock.pass(30_000);
  markPartDone(bench, clock.now());
  // What was written is on its way until the log has answered.
  while (bench.saving.value.state !== 'saved') await new Promise((resolve) => setTimeout(resolve, 0));
  const flags: string[] = [];
  for await (const batch of log.readAll()) {
    for (const { fact } of batch) if (/slept|clock/.test(fact.kind)) flags.push(fact.kind);
  }
  return { turn: bench.turn.value!, flags, bench };
}

/** The wall clock is slewed while both clocks run: so many parts per million, a second at a time. */
function slew(clock: FakeClock, seconds: number, ppm: number): void {
  let owedMs = 0;
  for (let second = 0; second < seconds; second += 1) {
    owedMs += ppm / 1_000;
    const whole = Math.trunc(owedMs);
    owedMs -= whole;
    clock.setBy(whole);
    clock.pass(1_000);
  }
}

interface Row {
  readonly name: string;
  happens(clock: FakeClock): void;
  /** What the log says of the clocks. */
  readonly flags: readonly string[];
  /** Net time of the one part, and time nobody can account for. */
  readonly netMs: number;
  readonly unaccountedMs: number;
}

const table: readonly Row[] = [
  {
    name: 'set forward by an hour',
    happens: (clock) => clock.setBy(HOUR),
    flags: ['clock-set'],
    netMs: MINUTE,
    unaccountedMs: 0,
  },
  {
    name: 'set back by an hour',
    happens: (clock) => clock.setBy(-HOUR),
    flags: ['clock-set'],
    netMs: MINUTE,
    unaccountedMs: 0,
  },
  {
    name: 'set back by two seconds',
    happens: (clock) => clock.setBy(-2_000),
    flags: ['clock-set'],
    netMs: MINUTE,
    unaccountedMs: 0,
  },
  {
    name: 'set back by 300 ms',
    happens: (clock) => {
      clock.setBy(-300);
      clock.pass(MINUTE);
    },
    flags: ['clock-set'],
    netMs: 2 * MINUTE,
    unaccountedMs: 0,
  },
  {
    name: 'set forward by a second',
    happens: (clock) => {
      clock.setBy(1_000);
      clock.pass(MINUTE);
    },
    flags: ['clock-set'],
    netMs: 2 * MINUTE,
    unaccountedMs: 0,
  },
  // The wall clock counts seconds since 1970: neither daylight saving nor another zone moves it.
  {
    name: 'daylight saving begins',
    happens: (clock) => {
      clock.offsetMin = 120;
    },
    flags: [],
    netMs: MINUTE,
    unaccountedMs: 0,
  },
  {
    name: 'daylight saving ends',
    happens: (clock) => {
      clock.offsetMin = 0;
    },
    flags: [],
    netMs: MINUTE,
    unaccountedMs: 0,
  },
  {
    name: 'another time zone',
    happens: (clock) => {
      clock.zone = 'Asia/Kolkata';
      clock.offsetMin = 330;
    },
    flags: [],
    netMs: MINUTE,
    unaccountedMs: 0,
  },
  {
    name: 'asleep for ten minutes',
    happens: (clock) => clock.sleep(10 * MINUTE),
    flags: ['slept'],
    netMs: MINUTE,
    unaccountedMs: 10 * MINUTE,
  },
  {
    name: 'asleep for five seconds',
    happens: (clock) => clock.sleep(5_000),
    flags: ['slept'],
    netMs: 65_000,
    unaccountedMs: 0,
  },
  // 500 ppm over ten minutes are 0.3 s, and 30 ms in any one of them.
  {
    name: 'slewed by 500 ppm',
    happens: (clock) => slew(clock, 600, 500),
    flags: [],
    netMs: 11 * MINUTE,
    unaccountedMs: 0,
  },
  // 5,000 ppm are 300 ms a minute. The watch’s minutes begin half a minute earlier: one lies wholly in the drift.
  {
    name: 'drifting by 5,000 ppm',
    happens: (clock) => slew(clock, 120, 5_000),
    flags: ['clock-drifted'],
    netMs: 3 * MINUTE,
    unaccountedMs: 0,
  },
];

describe('what the clocks do in a turn', () => {
  for (const { name, happens, flags, netMs, unaccountedMs } of table) {
    it(`${name}: told apart, and no part is longer or shorter for it`, async () => {
      const { turn, flags: told } = await turnThrough(happens);
      expect(told).toEqual(flags);
      expect(turn.cycles).toMatchObject([{ netMs, isCounted: unaccountedMs === 0 }]);
      expect(ledgerTotals(turn.ledger)).toMatchObject({ cycle: netMs, unaccounted: unaccountedMs });
    });
  }

  it('is nothing in eight hours of ordinary running, slewed by up to 500 ppm: no flag and no question', async () => {
    const { turn, flags } = await turnThrough((clock) => slew(clock, 8 * 3_600, 500));
    expect(flags).toEqual([]);
    expect(turn.doubts).toEqual([]);
  });

  it('writes that the page is there again, and asks where it was gone for ten seconds and more', async () => {
    for (const [awayMs, asks] of [
      [9_000, 0],
      [10_000, 1],
    ] as const) {
      const log = new InMemoryRecordLog('t');
      const clock = new FakeClock();
      const bench = await Bench.open(log, clock);
      startTurn(bench, 'K7', { part: 't:1', partCode: 'M', targetMs: 90_000 });
      await new Promise((resolve) => setTimeout(resolve, 0));
      clock.reload(awayMs);
      const again = await Bench.open(log, clock);
      expect(again.turn.value?.doubts).toHaveLength(asks);
      // A tab that only reads, and that comes later, writes nothing.
      clock.reload(20_000);
      const reader = await Bench.open(log, clock, null, true);
      expect(await log.count()).toBe(2);
      reader.close();
      bench.close();
      again.close();
    }
  });
});
