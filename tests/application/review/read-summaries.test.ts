import { describe, expect, it } from 'vitest';
import { Bench } from '../../../src/application/bench';
import type { SummaryShelf } from '../../../src/application/ports/summary-shelf';
import { readSummaries } from '../../../src/application/review/read-summaries';
import { setCalendar } from '../../../src/application/shop/set-calendar';
import { startTurn } from '../../../src/application/turn/start-turn';
import type { Fact, LogRecord } from '../../../src/domain/records/log-record';
import { recordKey } from '../../../src/domain/records/record-key';
import { seededRandom } from '../../../src/statistics/seeded-random';
import { InMemoryRecordLog } from '../../../src/storage/in-memory-record-log';
import { InMemorySummaryShelf } from '../../../src/storage/summaries/in-memory-summary-shelf';
import { records as demo } from '../../demo/demo-shop';
import { FakeClock } from '../../support/fake-clock';
import { stampAt } from '../../support/records';

const MARCH = { from: '2026-03-01', to: '2026-03-31' };
const inHand = { part: 'p', partCode: 'M', targetMs: 90_000 };

/** Counts the days that were made. */
class CountingShelf extends InMemorySummaryShelf {
  made = 0;
  override async keep(...[days]: Parameters<SummaryShelf['keep']>): Promise<void> {
    this.made += days.length;
    await super.keep(days);
  }
}

async function read(log: InMemoryRecordLog, shelf: SummaryShelf) {
  const bench = await Bench.open(log, new FakeClock());
  try {
    return (await readSummaries(bench, shelf, MARCH)).days;
  } finally {
    await bench.rest();
  }
}

/** A log that a test goes on writing. */
class Growing {
  readonly log = new InMemoryRecordLog('demo');
  private last = 0;

  async take(records: readonly LogRecord[]): Promise<void> {
    await this.log.append(records);
    this.last = records.at(-1)!.sequence;
  }

  async write(stream: string | null, fact: Fact, dayMs = 0): Promise<string> {
    this.last += 1;
    const key = `demo:${this.last}`;
    const stamp = stampAt(dayMs);
    await this.log.append([
      { device: 'demo', sequence: this.last, stream: stream ?? key, stamp, fact, chain: 0 },
    ]);
    return key;
  }
}

const turns = demo.filter(({ fact }) => fact.kind === 'turn-started');
const parts = demo.filter(({ fact }) => fact.kind === 'part-done');

describe('summaries that are kept', () => {
  it('equal those made from scratch through 40 random additions, for three seeds', async () => {
    for (const seed of [1, 271_828, 3_141_592]) {
      const random = seededRandom(seed);
      const pick = <Item>(items: readonly Item[]) => items[Math.floor(random() * items.length)]!;
      const growing = new Growing();
      // The first two days, so that each comparison is quick.
      await growing.take(demo.slice(0, demo.indexOf(turns[4]!)));
      const known = turns.slice(0, 4);
      const shelf = new InMemorySummaryShelf();
      for (let step = 0; step < 40; step += 1) {
        const part = pick(parts.slice(0, 300));
        const turn = recordKey(pick(known));
        const choice = random();
        if (choice < 0.3) {
          await growing.write(part.stream, {
            kind: 'part-judged',
            partDone: recordKey(part),
            outcome: pick(['good', 'rework', 'scrap']),
          });
        } else if (choice < 0.5) {
          await growing.write(turn, {
            kind: 'time-reclassified',
            fromMs: Math.floor(random() * 9e6),
            toMs: 9e6 + Math.floor(random() * 2e6),
            category: 'stoppage',
            reason: 'material',
            label: '',
            by: 'FM',
            why: 'seen',
          });
        } else if (choice < 0.65) {
          await growing.write(part.stream, {
            kind: 'part-set-aside',
            partDone: recordKey(part),
            cause: 'first one',
            by: 'FM',
          });
        } else if (choice < 0.75) {
          await growing.write('shop', { kind: 'set-up-standard-set', standardMs: Math.ceil(random() * 9e4) });
        } else if (choice < 0.85) {
          const own = await growing.write(null, {
            kind: 'turn-started',
            starts: 'turn',
            person: 'K7',
            ...inHand,
          });
          await growing.write(own, { kind: 'part-done', ...inHand }, Math.floor(random() * 9e5));
        } else {
          // A turn of another tablet comes in with a copy.
          const stream = `other:${step * 3 + 1}`;
          const at = (sequence: number, ms: number, fact: Fact) =>
            ({ device: 'other', sequence, stream, stamp: stampAt(ms), fact, chain: 0 }) as LogRecord;
          await growing.log.append([
            at(step * 3 + 1, 0, { kind: 'turn-started', starts: 'turn', person: 'M2', ...inHand }),
            at(step * 3 + 2, 80_000, { kind: 'part-done', ...inHand }),
          ]);
        }
        if (step % 4 !== 0) continue;
        const kept = await read(growing.log, shelf);
        expect(kept).toEqual(await read(growing.log, new InMemorySummaryShelf()));
      }
    }
  });

  it('are made once, and of a corrected turn its own day again', async () => {
    const growing = new Growing();
    await growing.take(demo);
    const shelf = new CountingShelf();
    await read(growing.log, shelf);
    expect(shelf.made).toBe(20);
    await read(growing.log, shelf);
    expect(shelf.made).toBe(20);
    await growing.write(parts[1]!.stream, {
      kind: 'part-judged',
      partDone: recordKey(parts[1]!),
      outcome: 'scrap',
    });
    expect((await read(growing.log, shelf))[0]!.scrap).toBe(
      (await read(growing.log, new CountingShelf()))[0]!.scrap,
    );
    expect(shelf.made).toBe(21);
  });

  it('are all made anew when what they were made with is no more: other terms, another calendar', async () => {
    const growing = new Growing();
    await growing.take(demo);
    const shelf = new CountingShelf();
    await read(growing.log, shelf);
    const mark = await shelf.readMark();
    await shelf.dropTurns([], { ...mark!, terms: mark!.terms.replace('[', '[0') });
    await read(growing.log, shelf);
    expect(shelf.made).toBe(40);
    await growing.write('shop', {
      kind: 'calendar-set',
      calendar: {
        shifts: [{ name: '', weekdays: [1], fromMin: 400, toMin: 900, breaks: [] }],
        exceptions: [],
      },
    });
    await read(growing.log, shelf);
    expect(shelf.made).toBe(60);
  });

  it('hold no day that is still being tapped', async () => {
    const log = new InMemoryRecordLog('t');
    const clock = new FakeClock();
    const bench = await Bench.open(log, clock);
    startTurn(bench, 'K7', inHand);
    clock.pass(80_000);
    const shelf = new CountingShelf();
    expect((await readSummaries(bench, shelf, MARCH)).days).toHaveLength(1);
    expect(shelf.made).toBe(0);
    await bench.rest();
  });

  it('are not missed: a shelf that refuses costs time only', async () => {
    class RefusingShelf extends InMemorySummaryShelf {
      override async keep(): Promise<void> {
        throw new Error('full');
      }
    }
    const growing = new Growing();
    await growing.take(demo.slice(0, demo.indexOf(turns[4]!)));
    expect(await read(growing.log, new RefusingShelf())).toHaveLength(2);
    class DeadShelf extends InMemorySummaryShelf {
      override async readMark(): Promise<never> {
        throw new Error('gone');
      }
      override async readDays(): Promise<never> {
        throw new Error('gone');
      }
    }
    expect(await read(growing.log, new DeadShelf())).toHaveLength(2);
  });

  it('never hold what a slow reader made before a correction came', async () => {
    let open = () => {};
    const gate = new Promise<void>((resolve) => {
      open = resolve;
    });
    class SlowShelf extends InMemorySummaryShelf {
      private isFirst = true;
      override async keep(...[days]: Parameters<SummaryShelf['keep']>): Promise<void> {
        const waits = this.isFirst;
        this.isFirst = false;
        if (waits) await gate;
        await super.keep(days);
      }
    }
    const growing = new Growing();
    await growing.take(demo.slice(0, demo.indexOf(turns[2]!)));
    const bench = await Bench.open(growing.log, new FakeClock());
    const shelf = new SlowShelf();
    const first = readSummaries(bench, shelf, MARCH);
    // Long enough for it to have made the day, were nothing in its way.
    await new Promise((resolve) => setTimeout(resolve, 50));
    await growing.write(parts[1]!.stream, {
      kind: 'part-judged',
      partDone: recordKey(parts[1]!),
      outcome: 'scrap',
    });
    const second = readSummaries(bench, shelf, MARCH);
    await new Promise((resolve) => setTimeout(resolve, 50));
    open();
    await Promise.all([first, second]);
    const fresh = await readSummaries(bench, new InMemorySummaryShelf(), MARCH);
    expect(await readSummaries(bench, shelf, MARCH)).toEqual(fresh);
    await bench.rest();
  });

  it('keep the breaks that a day had, also where its turns know none, when the shop changes its calendar', async () => {
    const log = new InMemoryRecordLog('demo');
    await log.append(demo);
    const shelf = new InMemorySummaryShelf();
    const before = await read(log, shelf);
    const clock = new FakeClock();
    clock.pass(40 * 86_400_000);
    const own = await Bench.open(log, clock);
    const { shifts } = own.shop.peek().calendar!;
    const meal = { fromMin: 810, toMin: 840, isAttended: false };
    setCalendar(own, { shifts: shifts.map((shift) => ({ ...shift, breaks: [meal] })), exceptions: [] });
    await own.rest();
    expect(await read(log, shelf)).toEqual(before);
  });
});
