import { describe, expect, it } from 'vitest';
import { sizedElements } from '../../../src/domain/study/standard-data';
import type { StudyRow } from '../../../src/domain/study/study-row';
import { timeOfWhole, wholePart } from '../../../src/domain/study/whole-part';
import { element } from './study-at-the-bench';

const row = (name: string, elementNo: number, observedMs: number, more: Partial<StudyRow>): StudyRow => ({
  study: 'S',
  cycle: 1,
  element: name,
  elementNo,
  elementClass: 'repetitive',
  work: 'manual',
  placement: 'external',
  unitsPerOccurrence: 1,
  partsPerCycle: 1,
  observedMs,
  ratingPct: 100,
  excluded: null,
  allowancePct: 10,
  allowanceBasis: 'normal_time',
  machineAllowancePct: 0,
  carried: {},
  ...more,
});

/** Loading is the same for every size, cleaning takes 100 + 50 a metre, boring 20 a hole; blades every tenth part. */
const timed = [1, 2, 3, 4].flatMap((metres, place) =>
  [-1, 1, 0].flatMap((off) => {
    const holes = [3, 1, 4, 2][place]!;
    const carried = { metres: String(metres), holes: String(holes) };
    return [
      row('load', 1, 200 + off, { carried }),
      row('clean', 2, 100 + 50 * metres + off, { carried }),
      row('bore', 3, 20 * holes + off, { carried, work: 'machine' }),
      row('blade', 4, 300, { carried, elementClass: 'occasional', unitsPerOccurrence: 10 }),
    ];
  }),
);
const studyOf = (rows: readonly StudyRow[], method: string[] = []) => ({
  readings: rows.map((one, place) => ({ id: `${place}`, row: one, isMerged: false })),
  method: method.map((name) => element(name)),
});
const cleaning = sizedElements(timed).find(
  (sized) => sized.element === 'clean' && sized.driver === 'metres',
)!;

describe('the time of a whole part, where one of its elements grows with size', () => {
  it('takes every other element by the size it grows with, or by its mean', () => {
    const whole = wholePart([studyOf(timed)], cleaning);
    expect(whole.elements.map(({ row: one, grows }) => [one.element, grows?.driver])).toEqual([
      ['load', undefined],
      ['clean', 'metres'],
      ['bore', 'holes'],
      ['blade', undefined],
    ]);
    const sizes = new Map([
      ['metres', 2.5],
      ['holes', 2],
    ]);
    const { summary, outside } = timeOfWhole(whole, sizes);
    // 200 + (100 + 125) + 40 + 300 ÷ 10; the allowance of a tenth is on the hand work, not on the machine's.
    expect(summary.normalTimeMs).toBeCloseTo(495, 6);
    expect(summary.standardTimeMs).toBeCloseTo(455 * 1.1 + 40, 6);
    expect(outside).toEqual([]);
  });

  it('names the element whose size nobody studied', () => {
    const whole = wholePart([studyOf(timed)], cleaning);
    const sizes = new Map([
      ['metres', 2.5],
      ['holes', 40],
    ]);
    expect(timeOfWhole(whole, sizes).outside).toEqual(['bore']);
  });

  it('says what is missing: an element that was never read, or of which no reading is used', () => {
    const names = ['load', 'clean', 'bore', 'blade', 'wipe'];
    expect(wholePart([studyOf(timed, names)], cleaning).missing).toEqual(['wipe']);
    const without = timed.map((one) => (one.element === 'load' ? { ...one, excluded: 'fumble' } : one));
    expect(wholePart([studyOf(without)], cleaning).missing).toEqual(['load']);
  });

  it('takes nothing from a study of another method', () => {
    const other = [row('clean', 1, 170, {}), row('polish', 2, 900, {})];
    const whole = wholePart([studyOf(timed), studyOf(other)], cleaning);
    expect(whole.elements.map(({ row: one }) => one.element)).not.toContain('polish');
  });
});
