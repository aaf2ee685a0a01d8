import { describe, expect, it } from 'vitest';
import { randomStreams } from '../../../src/domain/cell/random-streams';
import { simulateLine } from '../../../src/domain/cell/simulate-line';
import { lotMakespan } from '../../../src/statistics/lot-makespan';

const streams = randomStreams(20260302, 16);
const exponential = (stream: number, mean = 1) => {
  const random = streams[stream]!;
  return () => -mean * Math.log(random());
};
const PARTS = 400_000;

/** Parts for each unit of time, once the line is full. */
function rate(stations: (() => number)[], buffers: number[]): number {
  const { left } = simulateLine({ stations, buffers }, PARTS);
  const from = 1_000;
  return (PARTS - from) / (left[PARTS - 1]! - left[from - 1]!);
}

describe('a line of stations', () => {
  it('that never varies gives a part for every time of its longest station', () => {
    const { left } = simulateLine({ stations: [() => 2, () => 3, () => 1], buffers: [0, 0] }, 100);
    expect(left[99]! - left[98]!).toBe(3);
    expect(left[0]).toBe(6);
    expect(left[99]).toBe(lotMakespan(100, [2, 3, 1]).onePieceLast);
  });

  // Hillier and Boling, "The effect of some design factors on the efficiency of production lines", 1966, and
  // earlier Hunt, "Sequential arrays of waiting lines", Operations Research 4 (1956), pp. 674–683 (from memory).
  it('of two exponential stations without a place between them gives 2/3 of the rate of one', () => {
    expect(Math.abs(rate([exponential(1), exponential(2)], [0]) - 2 / 3)).toBeLessThan(0.003);
  });

  it.each([1, 2, 5, 10])('with %d places between two gives (b + 2)/(b + 3)', (places) => {
    const expected = (places + 2) / (places + 3);
    expect(Math.abs(rate([exponential(3), exponential(4)], [places]) - expected)).toBeLessThan(0.003);
  });

  it('of three without a place gives 22/39 (Hunt 1956)', () => {
    const three = [exponential(5), exponential(6), exponential(7)];
    expect(Math.abs(rate(three, [0, 0]) - 22 / 39)).toBeLessThan(0.003);
  });
});

describe('one station with parts that come by chance', () => {
  const load = 0.8;
  const waiting = (time: () => number, seed: number) => {
    const run = simulateLine({ stations: [time], buffers: [], arrival: exponential(seed, 1 / load) }, PARTS);
    return { ...run, mean: run.began.reduce((sum, began, n) => sum + began - run.arrived[n]!, 0) / PARTS };
  };

  it('lets them wait ρ/(1 − ρ) service times when service is exponential: 4 at a load of 0.8', () => {
    expect(Math.abs(waiting(exponential(11), 12).mean - 4)).toBeLessThan(0.2);
  });

  it('lets them wait half as long when service never varies: ρ/(2(1 − ρ)) = 2', () => {
    expect(Math.abs(waiting(() => 1, 13).mean - 2)).toBeLessThan(0.08);
  });

  it('holds on average the rate times the lead time, counted moment by moment (Little)', () => {
    const { arrived, left } = waiting(exponential(14), 15);
    // Comings and goings in order of time, and the parts inside between each two of them.
    const events = [...Array.from(arrived, (at) => [at, 1]), ...Array.from(left, (at) => [at, -1])];
    events.sort((a, b) => a[0]! - b[0]!);
    let [inside, before, area] = [0, 0, 0];
    for (const [at, step] of events) {
      area += inside * (at! - before);
      before = at!;
      inside += step!;
    }
    const leadTime = left.reduce((sum, at, n) => sum + at - arrived[n]!, 0) / PARTS;
    expect(area / before / ((PARTS / before) * leadTime)).toBeCloseTo(1, 6);
  });
});

describe('a line that cannot be', () => {
  it.each([
    [{ stations: [], buffers: [] }, 1],
    [{ stations: [() => 1, () => 1], buffers: [] }, 1],
    [{ stations: [() => 1, () => 1], buffers: [-1] }, 1],
    [{ stations: [() => 1], buffers: [] }, 0],
  ])('is refused in a sentence', (line, parts) => {
    expect(() => simulateLine(line, parts)).toThrow(/^simulateLine requires /);
  });

  it('is not one whose station takes no time', () => {
    const { left } = simulateLine({ stations: [() => 0, () => 2], buffers: [0] }, 10);
    expect(left[9]).toBe(20);
  });
});
