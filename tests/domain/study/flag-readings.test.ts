import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { flagReadings } from '../../../src/domain/study/flag-readings';
import type { Reading } from '../../../src/domain/study/study';
import { tooQuick } from '../../../src/domain/study/too-quick';
import { readReadingsTable } from '../../../src/exchange/read-readings-table';
import { lines, openStudy, studyOf, tapAfter } from './study-at-the-bench';

const demo = readFileSync(new URL('../../../fixtures/studies/demo-m-k7-study.csv', import.meta.url));

/** The invented shop's study, as its table gives it. */
function demoReadings(): Reading[] {
  const table = readReadingsTable(new Uint8Array(demo));
  if (!table.ok) throw new Error('the demo study must be readable');
  return table.rows.map((row, place) => ({
    id: String(place),
    isMerged: false,
    row,
  }));
}
const named = (readings: Reading[]) =>
  flagReadings(readings).map(({ reading: { row }, why }) => `${row.element}, ${row.cycle}: ${why}`);

describe('a flag', () => {
  it('keeps quiet about the slow but causeless reading of the demo study, edge cleaning in cycle 27', () => {
    expect(named(demoReadings()).filter((name) => name.startsWith('E6'))).toEqual([]);
  });

  it('points at the clamp fault of cycle 12 where it was not timed apart', () => {
    // The fault took 1.530 min; a table without the foreign row has it inside the machine's run.
    const readings = demoReadings().map((reading) =>
      reading.row.element === 'MC bore' && reading.row.cycle === 12
        ? { ...reading, row: { ...reading.row, observedMs: reading.row.observedMs! + 91_800 } }
        : reading,
    );
    expect(named(readings)).toContain('MC bore, 12: high');
  });

  it('calls no reading far that lies within a tenth of the others, however little they spread', () => {
    const [first] = demoReadings();
    const at = (times: readonly number[]) =>
      named(
        times.map((observedMs, place) => ({
          ...first!,
          id: String(place),
          row: {
            ...first!.row,
            element: 'Load',
            cycle: place + 1,
            observedMs,
            ratingPct: 100,
            excluded: null,
          },
        })),
      );
    const alike = [6_840, 6_846, 6_834, 6_840, 6_852, 6_828, 6_840, 6_846];
    expect(at([...alike, 6_540])).toEqual([]);
    expect(at([...alike, 5_400])).toEqual(['Load, 9: low']);
  });

  it('says on which side a reading lies, and nothing below seven readings', async () => {
    const at = await openStudy();
    for (const load of [2_000, 2_100, 1_950, 2_050, 900, 2_020]) {
      for (const ms of [load, 5_000, 3_000]) tapAfter(at, ms);
    }
    expect(named([...studyOf(at.bench).readings])).toEqual([]);
    for (const ms of [2_000, 5_000, 3_000]) tapAfter(at, ms);
    expect(named([...studyOf(at.bench).readings])).toEqual(['Load, 5: low']);
  });
});

describe('a second tap in one moment', () => {
  it('is pointed at, and stays in the mean until a person leaves it out', async () => {
    const at = await openStudy();
    for (const ms of [2_000, 300]) tapAfter(at, ms);
    const { readings } = studyOf(at.bench);
    expect(tooQuick(readings).map(({ row }) => row.element)).toEqual(['Run']);
    expect(lines(studyOf(at.bench))).toEqual(['Load 1: 2000', 'Run 1: 300']);
    expect(flagReadings(readings).map(({ why }) => why)).toEqual(['quick']);
  });

  it('is a run of a machine under a second, and no work by hand of that length', async () => {
    const at = await openStudy();
    for (const ms of [900, 900, 3_000]) tapAfter(at, ms);
    expect(tooQuick(studyOf(at.bench).readings).map(({ row }) => row.element)).toEqual(['Run']);
  });

  it('is one within 1.5 s too, where the element usually takes four times as long', async () => {
    const at = await openStudy();
    for (let cycle = 0; cycle < 4; cycle += 1) for (const ms of [6_000, 5_000, 3_000]) tapAfter(at, ms);
    tapAfter(at, 1_400);
    expect(tooQuick(studyOf(at.bench).readings).map(({ row }) => [row.element, row.observedMs])).toEqual([
      ['Load', 1_400],
    ]);
  });

  it('is none where an element is always that quick', async () => {
    const at = await openStudy();
    for (let cycle = 0; cycle < 4; cycle += 1) for (const ms of [400, 5_000, 3_000]) tapAfter(at, ms);
    expect(tooQuick(studyOf(at.bench).readings)).toEqual([]);
  });
});
