import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { LateFlush } from '../../src/storage/journal/late-flush';

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

it('flushes once, and soon, for all that was written in between', () => {
  let flushes = 0;
  const late = new LateFlush(() => {
    flushes += 1;
  });
  for (let tap = 0; tap < 5; tap += 1) {
    late.ask();
    vi.advanceTimersByTime(30);
  }
  expect(flushes).toBe(0);
  vi.advanceTimersByTime(60);
  expect(flushes).toBe(1);
  vi.advanceTimersByTime(60_000);
  expect(flushes).toBe(1);
  late.ask();
  vi.advanceTimersByTime(200);
  expect(flushes).toBe(2);
});

it('tells everybody who asks later that a flush has failed, and the failure goes nowhere else', () => {
  const full = new Error('the disk is full');
  const late = new LateFlush(() => {
    throw full;
  });
  late.mustBeWell();
  late.ask();
  vi.advanceTimersByTime(200);
  expect(() => late.mustBeWell()).toThrow(full);
  expect(() => late.mustBeWell()).toThrow(full);
});
