import { describe, expect, it } from 'vitest';
import { ClockWatch } from '../../src/application/clock-watch';
import type { ClockFact } from '../../src/domain/records/turn-fact';
import { FakeClock } from '../support/fake-clock';

const MINUTE = 60_000;

function watched(happens: (clock: FakeClock) => void): ClockFact[] {
  const clock = new FakeClock();
  const watch = new ClockWatch(clock);
  const noted: ClockFact[] = [];
  watch.start(() => {
    const fact = watch.compare(clock.now());
    if (fact) noted.push(fact);
  });
  clock.pass(10_000);
  happens(clock);
  clock.pass(10_000);
  watch.stop();
  return noted;
}

describe('the watch over the two clocks', () => {
  it('notes nothing in eight hours of ordinary running', () => {
    expect(watched((clock) => clock.pass(8 * 60 * MINUTE))).toEqual([]);
  });

  it('notes a sleep of ten minutes once, with its length', () => {
    expect(watched((clock) => clock.sleep(10 * MINUTE))).toEqual([{ kind: 'slept', sleptMs: 10 * MINUTE }]);
  });

  it('notes a clock set forward by seven minutes in view of the page, and one set back by an hour', () => {
    expect(watched((clock) => clock.setBy(7 * MINUTE))).toEqual([{ kind: 'clock-set', byMs: 7 * MINUTE }]);
    expect(watched((clock) => clock.setBy(-60 * MINUTE))).toEqual([
      { kind: 'clock-set', byMs: -60 * MINUTE },
    ]);
  });

  it('compares nothing with an input that is older than the last heartbeat', () => {
    const clock = new FakeClock();
    const watch = new ClockWatch(clock);
    watch.start(() => {});
    clock.pass(5_000);
    const tap = clock.now();
    clock.pass(3_000);
    expect(watch.compare(clock.now())).toBeNull();
    expect(watch.compare({ ...tap, wallMs: tap.wallMs - 500_000 })).toBeNull();
  });
});
