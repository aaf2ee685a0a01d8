import { describe, expect, it } from 'vitest';
import { ledgerTotals } from '../../src/domain/turn/ledger-totals';
import type { Turn } from '../../src/domain/turn/turn';
import { days, minutes, sum, turns, turnsOf, week1, week2, weeks3And4 } from './demo-shop';

const mornings = turns.filter((_, place) => place % 2 === 0);
const afternoons = turns.filter((_, place) => place % 2 === 1);
const clock = (minute: number) => 60_000 * minute;
/** When the planned breaks of a turn ended, and how long they lasted, in minutes from 07:00. */
const breaks = ({ startedAt, stoppages }: Turn) =>
  stoppages
    .filter(({ category }) => category === 'planned-break')
    .map(({ fromMs, toMs }) => ({
      ends: minutes(startedAt.monoMs + toMs!),
      lasts: minutes(toMs! - fromMs),
    }));

describe('the turns of the demo shop', () => {
  it('are two on each of twenty days, Monday 2 to Friday 27 March 2026', () => {
    expect(turns).toHaveLength(40);
    expect(days).toHaveLength(20);
    expect(days.map(({ turns: count }) => count)).toEqual(Array(20).fill(2));
    expect([days[0]!.day, days[4]!.day, days[5]!.day, days[19]!.day]).toEqual([
      '2026-03-02',
      '2026-03-06',
      '2026-03-09',
      '2026-03-27',
    ]);
  });

  it('begin at 07:00 and 11:30, with three people in rotation', () => {
    expect(mornings.every(({ startedAt }) => startedAt.monoMs === 0)).toBe(true);
    expect(afternoons.every(({ startedAt }) => startedAt.monoMs === clock(270))).toBe(true);
    // The rota of the shop: K7, M2, R4 in the mornings, M2, R4, K7 after lunch.
    expect(turns.slice(0, 8).map(({ person }) => person)).toEqual([
      'K7',
      'M2',
      'M2',
      'R4',
      'R4',
      'K7',
      'K7',
      'M2',
    ]);
  });

  it('have every millisecond in their ledger once', () => {
    for (const { ledger, lastAtMs, status } of turns) {
      expect(status).toBe('ended');
      expect(sum(Object.values(ledgerTotals(ledger)))).toBe(lastAtMs);
      expect(ledger.map(({ fromMs }) => fromMs)).toEqual([0, ...ledger.slice(0, -1).map(({ toMs }) => toMs)]);
    }
  });

  it('leave nothing unaccounted one by one, and in batches only the rack in hand at the end', () => {
    const unaccounted = (turn: Turn) => ledgerTotals(turn.ledger).unaccounted;
    expect(turnsOf({ from: week2.from, to: weeks3And4.to }).map(unaccounted)).toEqual(Array(30).fill(0));
    for (const turn of turnsOf(week1)) {
      const lastTap = turn.cycles.at(-1)!.toMs;
      expect(unaccounted(turn)).toBeLessThanOrEqual(turn.lastAtMs - lastTap);
    }
  });

  it('end no cycle inside lunch by more than 3 minutes, and the day at 15:00', () => {
    // Plan: lunch from 11:00, minute 240. A cycle that was begun before is finished.
    for (const { lastAtMs } of mornings) {
      expect(lastAtMs).toBeGreaterThanOrEqual(clock(240));
      expect(lastAtMs).toBeLessThan(clock(243));
    }
    // One afternoon ran over, in which stoppages of machine and operator coincided.
    const ends = afternoons.map(({ startedAt, lastAtMs }) => minutes(startedAt.monoMs + lastAtMs));
    expect(ends.filter((end) => end !== 480).map((end) => end.toFixed(1))).toEqual(['481.4']);
  });

  it('come back from every break on time', () => {
    for (const morning of mornings) {
      const [meeting, first, ...more] = breaks(morning);
      expect(meeting!.ends).toBeGreaterThanOrEqual(5);
      expect(meeting!.ends).toBeLessThan(6);
      expect(first!.ends).toBe(130);
      expect(first!.lasts).toBeGreaterThan(0);
      expect(more).toEqual([]);
    }
    for (const afternoon of afternoons) {
      const [second, closeDown] = breaks(afternoon);
      expect(second!.ends).toBe(400);
      expect(second!.lasts).toBeGreaterThan(0);
      if (closeDown) expect(closeDown.ends).toBe(480);
    }
  });

  it('set up as often and as long as the simulation did', () => {
    // The independent simulation: set-ups by day, and their minutes in total.
    const setUps = (turn: Turn) => turn.stoppages.filter(({ category }) => category === 'set-up');
    const byDay = days.map((_, place) => turns.slice(2 * place, 2 * place + 2).flatMap(setUps).length);
    expect(byDay).toEqual([5, 6, 4, 7, 4, 9, 5, 12, 6, 9, 7, 11, 8, 8, 10, 10, 8, 8, 8, 11]);
    const total = sum(turns.flatMap(setUps).map(({ fromMs, toMs }) => toMs! - fromMs));
    expect(minutes(total)).toBeCloseTo(321.83, 2);
  });
});
