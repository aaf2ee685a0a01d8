import { describe, expect, it } from 'vitest';
import { chooseElement } from '../../../src/application/study/choose-element';
import { holdWatch } from '../../../src/application/study/hold-watch';
import { markInHand } from '../../../src/application/study/mark-in-hand';
import { undoLastReading } from '../../../src/application/study/undo-last-reading';
import { element, lines, openStudy, studyOf, tapAfter } from './study-at-the-bench';

const abcd = ['A', 'B', 'C', 'D'].map((name) => element(name));
const open = () => openStudy({ elements: abcd });

describe('elements out of order', () => {
  it('are chosen with one tap, and the method goes on behind them', async () => {
    const at = await open();
    tapAfter(at, 1_000);
    chooseElement(at.bench, 3);
    tapAfter(at, 3_000);
    chooseElement(at.bench, 2);
    tapAfter(at, 2_000);
    // C was read already in this cycle.
    tapAfter(at, 4_000);
    tapAfter(at, 1_100);
    expect(lines(studyOf(at.bench))).toEqual([
      'A 1: 1000',
      'C 1: 3000',
      'B 1: 2000',
      'D 1: 4000',
      'A 2: 1100',
    ]);
  });

  it('begin the next cycle where the chosen one was read in this', async () => {
    const at = await open();
    tapAfter(at, 1_000);
    tapAfter(at, 2_000);
    chooseElement(at.bench, 1);
    tapAfter(at, 1_200);
    expect(lines(studyOf(at.bench)).at(-1)).toBe('A 2: 1200');
  });

  it('can be taken back', async () => {
    const at = await open();
    chooseElement(at.bench, 3);
    expect(studyOf(at.bench).undoable).toMatchObject({ kind: 'element-chosen', element: 'C' });
    undoLastReading(at.bench);
    tapAfter(at, 1_000);
    expect(lines(studyOf(at.bench))).toEqual(['A 1: 1000']);
  });

  it('are none of the occasional ones, which are timed apart', async () => {
    const { bench } = await openStudy();
    expect(() => chooseElement(bench, 4)).toThrow(
      'chooseElement requires an element that comes in every cycle',
    );
  });
});

describe('a method not followed', () => {
  it('is marked with one tap while it happens, and the reading is left out for it', async () => {
    const at = await open();
    markInHand(at.bench, 'method-not-followed');
    tapAfter(at, 1_000);
    tapAfter(at, 2_000);
    expect(lines(studyOf(at.bench))).toEqual(['A 1: 1000 (method-not-followed)', 'B 1: 2000']);
  });

  it('is unmarked with another', async () => {
    const at = await open();
    markInHand(at.bench, 'method-not-followed');
    markInHand(at.bench, 'method-not-followed');
    tapAfter(at, 1_000);
    expect(lines(studyOf(at.bench))).toEqual(['A 1: 1000']);
  });
});

describe('snapback', () => {
  it('reads what continuous timing would, tap by tap', async () => {
    const at = await openStudy({ elements: abcd, timing: 'snapback' });
    for (const ms of [1_000, 2_000, 3_000]) tapAfter(at, ms);
    expect(lines(studyOf(at.bench))).toEqual(['A 1: 1000', 'B 1: 2000', 'C 1: 3000']);
  });

  it('lets the watch stand: what passes meanwhile is in no reading, and the element begins anew', async () => {
    const at = await openStudy({ elements: abcd, timing: 'snapback' });
    tapAfter(at, 1_000);
    at.clock.pass(300);
    holdWatch(at.bench, at.clock.now());
    tapAfter(at, 9_000);
    tapAfter(at, 2_000);
    expect(lines(studyOf(at.bench))).toEqual(['A 1: 1000', 'B 1: 2000']);
  });

  it('alone lets the watch stand', async () => {
    const at = await open();
    holdWatch(at.bench, at.clock.now());
    expect(studyOf(at.bench).watch.isHeld).toBe(false);
  });
});
