import { describe, expect, it } from 'vitest';
import { Bench } from '../../../src/application/bench';
import { beginForeign } from '../../../src/application/study/begin-foreign';
import { excludeReading } from '../../../src/application/study/exclude-reading';
import { restoreReading } from '../../../src/application/study/restore-reading';
import { flagReadings } from '../../../src/domain/study/flag-readings';
import { summariseStudy } from '../../../src/domain/study/summarise-study';
import { FakeClock } from '../../support/fake-clock';
import { lines, openStudy, settled, studyOf, tapAfter } from './study-at-the-bench';

const rowsOf = (bench: Bench) => studyOf(bench).readings.map(({ row }) => row);

describe('a study over a gap', () => {
  it('leaves a reading with sleep inside out, flags it, and keeps its whole time in view', async () => {
    const at = await openStudy();
    at.clock.pass(1_000);
    at.clock.sleep(600_000);
    tapAfter(at, 1_000);
    tapAfter(at, 5_000);
    // 1 s awake, 600 s asleep, 1 s awake.
    expect(lines(studyOf(at.bench))).toEqual(['Load 1: 602000 (tablet-slept)', 'Run 1: 5000']);
    expect(rowsOf(at.bench).map(({ carried }) => carried.clock_flag)).toEqual(['slept', '']);
  });

  it('keeps a reading with sleep inside out of the mean', async () => {
    const at = await openStudy();
    for (const ms of [2_000, 5_000, 3_000]) tapAfter(at, ms);
    at.clock.sleep(600_000);
    for (const ms of [2_000, 5_000, 3_000]) tapAfter(at, ms);
    const [load] = summariseStudy(rowsOf(at.bench)).elements;
    expect(load).toMatchObject({ n: 1, excluded: 1, observedMeanMs: 2_000 });
  });

  it('leaves what was timed apart over a sleep out as well', async () => {
    const at = await openStudy();
    beginForeign(at.bench, at.clock.now());
    at.clock.sleep(600_000);
    tapAfter(at, 1_000);
    expect(lines(studyOf(at.bench))).toEqual(['Foreign element 1: 601000 (tablet-slept)']);
  });

  it('lets a wall clock that was set change no reading', async () => {
    const at = await openStudy();
    at.clock.pass(1_000);
    at.clock.setBy(-3_600_000);
    tapAfter(at, 1_000);
    expect(lines(studyOf(at.bench))).toEqual(['Load 1: 2000']);
  });

  it('flags the reading in which a wall clock was set or crept away, and leaves it in every mean', async () => {
    const at = await openStudy();
    tapAfter(at, 2_000);
    at.clock.setBy(-3_600_000);
    tapAfter(at, 5_000);
    tapAfter(at, 3_000);
    for (let second = 0; second < 70; second += 1) {
      at.clock.setBy(6);
      at.clock.pass(1_000);
    }
    tapAfter(at, 1_000);
    tapAfter(at, 1_000);
    expect(rowsOf(at.bench).map(({ carried }) => carried.clock_flag)).toEqual([
      '',
      'clock-set',
      '',
      'clock-drifted',
      '',
    ]);
    expect(rowsOf(at.bench).filter(({ excluded }) => excluded !== null)).toEqual([]);
  });

  it('tells of a browser whose clock steps by 16.7 ms on every reading, and of one by 1 ms on none', async () => {
    for (const [step, flags] of [
      [50 / 3, ['coarse', 'slept']],
      [1, ['', 'slept']],
    ] as const) {
      const clock = new FakeClock();
      clock.step = step;
      const at = await openStudy({}, clock);
      tapAfter(at, 2_000);
      at.clock.sleep(600_000);
      tapAfter(at, 5_000);
      expect(rowsOf(at.bench).map(({ carried }) => carried.clock_flag)).toEqual(flags);
    }
  });

  it('is taken up after a reload where it stood, its watch still running', async () => {
    const at = await openStudy();
    tapAfter(at, 2_000, 110);
    at.clock.pass(1_000);
    await settled();
    at.clock.reload(1_500);
    const bench = await Bench.open(at.log, at.clock);
    expect(studyOf(bench).watch).toMatchObject({ cycle: 1, elementIndex: 1 });
    tapAfter({ bench, clock: at.clock }, 500);
    // 1 s before the reload, 1.5 s of the wall clock across it, 0.5 s after it.
    expect(lines(studyOf(bench))).toEqual(['Load 1: 2000', 'Run 1: 3000']);
  });

  it('flags the reading that a reload fell into, and only that one', async () => {
    const at = await openStudy();
    tapAfter(at, 2_000);
    await settled();
    at.clock.reload(1_500);
    const bench = await Bench.open(at.log, at.clock);
    tapAfter({ bench, clock: at.clock }, 500);
    tapAfter({ bench, clock: at.clock }, 500);
    expect(rowsOf(bench).map(({ carried }) => carried.clock_flag)).toEqual(['', 'reloaded', '']);
    // It stays in, deserves a look, and deserves none once somebody has left it out.
    expect(lines(studyOf(bench))[1]).toBe('Run 1: 2000');
    const toLookAt = () =>
      flagReadings(studyOf(bench).readings).map(({ reading: { row }, why }) => `${row.element} ${why}`);
    expect(toLookAt()).toContain('Run reloaded');
    excludeReading(bench, studyOf(bench), studyOf(bench).readings[1]!.id, 'page-reloaded');
    expect(toLookAt()).not.toContain('Run reloaded');
  });

  it('keeps a reading whose page was loaded again in a moment, however long its element had been in hand', async () => {
    const marks = { wallMs: 0 };
    const alive = { read: () => marks.wallMs, set: (wallMs: number) => Object.assign(marks, { wallMs }) };
    const at = await openStudy();
    tapAfter(at, 2_000);
    at.clock.pass(60_000);
    await settled();
    alive.set(at.clock.wallMs);
    at.clock.reload(500);
    const bench = await Bench.open(at.log, at.clock, null, false, alive);
    tapAfter({ bench, clock: at.clock }, 500);
    expect(lines(studyOf(bench))[1]).toBe('Run 1: 61000');
    expect(rowsOf(bench)[1]!.carried.clock_flag).toBe('reloaded');
  });

  it('leaves the reading out over which the page was gone for ten seconds, until a person puts it back', async () => {
    for (const [goneMs, is] of [
      [9_000, 'Run 1: 9500'],
      [900_000, 'Run 1: 900500 (page-reloaded)'],
    ] as const) {
      const at = await openStudy();
      tapAfter(at, 2_000);
      await settled();
      at.clock.reload(goneMs);
      const bench = await Bench.open(at.log, at.clock);
      tapAfter({ bench, clock: at.clock }, 500);
      tapAfter({ bench, clock: at.clock }, 500);
      expect(lines(studyOf(bench)).slice(1)).toEqual([is, 'Clean 1: 500']);
      expect(rowsOf(bench)[1]!.carried.clock_flag).toBe('reloaded');
      restoreReading(bench, studyOf(bench), studyOf(bench).readings[1]!.id);
      expect(rowsOf(bench)[1]!.excluded).toBeNull();
    }
  });
});
