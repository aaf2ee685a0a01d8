import { describe, expect, it } from 'vitest';
import { Bench } from '../../src/application/bench';
import { tendUpdate } from '../../src/application/tend-update';
import { endTurn } from '../../src/application/turn/end-turn';
import { startTurn } from '../../src/application/turn/start-turn';
import { InMemoryRecordLog } from '../../src/storage/in-memory-record-log';
import { FakeClock } from '../support/fake-clock';

const DAY = 86_400_000;

/** A page on which a release waits; jots outlive it, as on a tablet. */
async function page(jots: Map<string, string>, release = 'first') {
  const clock = new FakeClock();
  const bench = await Bench.open(new InMemoryRecordLog('t'), clock);
  let taken = 0;
  const hands = { touchedMs: 0 };
  const jotter = {
    read: (name: string) => jots.get(name) ?? null,
    write(name: string, text: string | null) {
      if (text === null) jots.delete(name);
      else jots.set(name, text);
    },
  };
  const presence = { idleMs: () => clock.monoMs - hands.touchedMs };
  const apply = () => {
    taken += 1;
  };
  tendUpdate({ apply }, { bench: () => bench, jotter, presence, release }, (periodMs, call) =>
    clock.every(periodMs, call),
  );
  const saved = () => new Promise((resolve) => setTimeout(resolve, 0));
  return { clock, bench, hands, saved, taken: () => taken };
}

describe('a release that waits and that nobody takes', () => {
  it('is taken by itself after seven days, once, when nobody is there', async () => {
    const { clock, taken } = await page(new Map());
    clock.pass(7 * DAY);
    expect(taken()).toBe(0);
    clock.pass(2 * 60_000);
    expect(taken()).toBe(1);
    clock.pass(DAY);
    expect(taken()).toBe(1);
  });

  it('is not taken while a turn runs, however long that is', async () => {
    const { clock, bench, taken, saved } = await page(new Map());
    startTurn(bench, 'K7', { part: 't:1', partCode: 'M', targetMs: null });
    await saved();
    clock.pass(8 * DAY);
    expect(taken()).toBe(0);
    endTurn(bench, clock.now());
    await saved();
    clock.pass(2 * 60_000);
    expect(taken()).toBe(1);
  });

  it('is not taken within ten minutes of a touch', async () => {
    const { clock, hands, taken } = await page(new Map());
    clock.pass(7 * DAY);
    hands.touchedMs = clock.monoMs;
    clock.pass(9 * 60_000);
    expect(taken()).toBe(0);
    clock.pass(2 * 60_000);
    expect(taken()).toBe(1);
  });

  it('has waited since it was first seen, also by a page before this one of the same release', async () => {
    const jots = new Map<string, string>();
    const first = await page(jots);
    first.clock.pass(6 * DAY);
    const same = await page(jots);
    same.clock.setBy(6 * DAY);
    same.clock.pass(DAY + 2 * 60_000);
    expect(same.taken()).toBe(1);
    const another = await page(jots, 'second');
    another.clock.setBy(6 * DAY);
    another.clock.pass(DAY + 2 * 60_000);
    expect(another.taken()).toBe(0);
  });
});
