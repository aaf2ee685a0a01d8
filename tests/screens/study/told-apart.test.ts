import { describe, expect, it } from 'vitest';
import type { StudyOfPart } from '../../../src/application/study/read-studies-of-part';
import { toldApart } from '../../../src/screens/study/standard/told-apart';
import { MORNING_MS } from '../../support/records';

const DAY = '2026-03-02';

/** A study timed here, begun so many minutes after seven. */
const timed = (operator: string, minutes: number) =>
  ({
    operator,
    day: DAY,
    study: { heading: {}, startedAt: { wallMs: MORNING_MS + minutes * 60_000, offsetMin: 60 }, readings: [] },
  }) as unknown as StudyOfPart;

/** A study out of a table. */
const fromTable = (operator: string, started: string) =>
  ({
    operator,
    day: DAY,
    study: { heading: null, startedAt: {}, readings: [{ row: { carried: { started_at: started } } }] },
  }) as unknown as StudyOfPart;

describe('studies side by side', () => {
  it('are told by their day where that is enough', () => {
    const all = [timed('K7', 0), timed('L2', 30)];
    expect(all.map((one) => toldApart(one, all))).toEqual([DAY, DAY]);
  });

  it('of one person and day are told by when they were begun, wherever they come from', () => {
    const all = [timed('K7', 0), timed('K7', 95), fromTable('K7', `${DAY}T14:05:00+01:00`), timed('L2', 30)];
    expect(all.map((one) => toldApart(one, all))).toEqual([
      `${DAY} 07:00`,
      `${DAY} 08:35`,
      `${DAY} 14:05`,
      DAY,
    ]);
  });
});
