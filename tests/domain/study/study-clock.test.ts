import { describe, expect, it } from 'vitest';
import { beginForeign } from '../../../src/application/study/begin-foreign';
import { checkClock } from '../../../src/application/study/check-clock';
import { endMachine } from '../../../src/application/study/end-machine';
import { endStudy } from '../../../src/application/study/end-study';
import { excludeReading } from '../../../src/application/study/exclude-reading';
import { holdWatch } from '../../../src/application/study/hold-watch';
import { studyClock } from '../../../src/domain/study/study-clock';
import { element, openStudy, studyOf, tapAfter } from './study-at-the-bench';

const clockOf = ({ bench }: Awaited<ReturnType<typeof openStudy>>) => studyClock(studyOf(bench));

describe('the clock check', () => {
  it('has nothing to say before the study ended', async () => {
    const at = await openStudy();
    tapAfter(at, 2_000);
    expect(clockOf(at)).toBeNull();
  });

  it('accounts for all of a study with a foreign element, and counts what came after the last break point', async () => {
    const at = await openStudy();
    tapAfter(at, 2_000);
    at.clock.pass(500);
    beginForeign(at.bench, at.clock.now());
    for (const ms of [300, 4_000]) tapAfter(at, ms);
    at.clock.pass(700);
    endStudy(at.bench, at.clock.now());
    expect(clockOf(at)).toMatchObject({
      effectiveMs: 6_500,
      ineffectiveMs: 300,
      afterMs: 700,
      unaccounted: 0,
      usable: true,
      isTyped: false,
    });
  });

  it('is about what was timed: leaving a reading out a day later changes nothing', async () => {
    const at = await openStudy();
    for (const ms of [2_000, 4_000]) tapAfter(at, ms);
    endStudy(at.bench, at.clock.now());
    at.clock.pass(86_400_000);
    excludeReading(at.bench, studyOf(at.bench), studyOf(at.bench).readings[0]!.id, 'interruption');
    expect(clockOf(at)).toMatchObject({ effectiveMs: 6_000, afterMs: 0, unaccounted: 0 });
  });

  it('counts one path: the machine that ran beside the operator fills no time of its own, waiting does', async () => {
    const at = await openStudy({
      lanes: 2,
      elements: [
        element('Load'),
        element('Bore', { work: 'machine' }),
        element('Inspect', { placement: 'internal' }),
      ],
    });
    tapAfter(at, 2_000);
    tapAfter(at, 1_000);
    at.clock.pass(800);
    endMachine(at.bench, at.clock.now());
    tapAfter(at, 2_000);
    endStudy(at.bench, at.clock.now());
    expect(clockOf(at)).toMatchObject({ effectiveMs: 5_000, ineffectiveMs: 800, unaccounted: 0 });
  });

  it('finds what passed while the watch of a snapback study stood, and above 2 % calls it not usable', async () => {
    const at = await openStudy({ timing: 'snapback' });
    tapAfter(at, 95_000);
    holdWatch(at.bench, at.clock.now());
    tapAfter(at, 3_000);
    tapAfter(at, 2_000);
    endStudy(at.bench, at.clock.now());
    expect(clockOf(at)).toMatchObject({ effectiveMs: 97_000, unaccounted: 3_000, usable: false });
  });

  it('shows time recorded twice as a minus, against a shop clock that says less', async () => {
    const at = await openStudy();
    tapAfter(at, 100_000);
    endStudy(at.bench, at.clock.now());
    checkClock(at.bench, studyOf(at.bench), { elapsedMs: 99_000, beforeMs: 0, afterMs: 0 });
    expect(clockOf(at)).toMatchObject({ unaccounted: -1_000, usable: true });
  });

  it('refuses a clock that did not move', async () => {
    const { bench } = await openStudy();
    const stopped = { elapsedMs: 0, beforeMs: 0, afterMs: 0 };
    expect(() => checkClock(bench, studyOf(bench), stopped)).toThrow(
      'checkClock requires an elapsed time above 0',
    );
  });
});
