import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import type { PartOfDay } from '../../src/domain/day/part-of-day';
import { type DayReview, reviewDay } from '../../src/domain/day/review-day';
import { writeDayTable } from '../../src/exchange/write-day-table';

/** Net times 80 85.2 94.8 s: mean 86.667 s = 1.4444 min, s 7.508 s = 0.1251 min, by hand (deviations −6.667 −1.467 8.133). */
const doors: PartOfDay = {
  part: 'part-1',
  partCode: 'WD-1310',
  n: 3,
  counted: 3,
  good: 1,
  rework: 1,
  scrap: 1,
  netTimesMs: [80_000, 85_200, 94_800],
  meanMs: 260_000 / 3,
  deviationMs: 7508.2177,
  shortestMs: 80_000,
  longestMs: 94_800,
  targetMs: 90_000,
  targetChanged: false,
  against: { n: 3, good: 2, netMs: 260_000, targetMs: 180_000, share: 260 / 180 },
};

const single: PartOfDay = {
  ...doors,
  partCode: '=WD-0716',
  n: 1,
  counted: 1,
  good: 1,
  rework: 0,
  scrap: 0,
  netTimesMs: [80_000],
  meanMs: 80_000,
  deviationMs: null,
  shortestMs: 80_000,
  longestMs: 80_000,
  targetMs: null,
  targetChanged: true,
  against: null,
};

const day = (name: string, ...parts: PartOfDay[]): DayReview => ({ ...reviewDay(name, []), parts });

describe('writeDayTable', () => {
  const written = writeDayTable([
    day('2026-03-17', doors, single),
    day('2026-03-18'),
    day('2026-03-19', single),
  ]);
  const records = Papa.parse<Record<string, string>>(written, { header: true, skipEmptyLines: true }).data;

  it('is a plain table with one row a day and part, and none for a day without parts', () => {
    expect(written.split('\r\n')[0]).toBe(
      'day,part,n,counted,good,rework,scrap,mean_s,sd_s,shortest_s,longest_s,' +
        'mean_min,sd_min,shortest_min,longest_min,target_s,target_min,target_changed,share_of_target_pct,' +
        'for_planning_not_for_pay_not_a_measure_of_a_person',
    );
    expect(records.map((record) => [record.day, record.n])).toEqual([
      ['2026-03-17', '3'],
      ['2026-03-17', '1'],
      ['2026-03-19', '1'],
    ]);
  });

  it('gives times in seconds and in decimal minutes, beside the target', () => {
    expect(records[0]).toMatchObject({
      part: 'WD-1310',
      good: '1',
      rework: '1',
      scrap: '1',
      mean_s: '86.667',
      sd_s: '7.508',
      shortest_s: '80.000',
      longest_s: '94.800',
      mean_min: '1.4444',
      sd_min: '0.1251',
      shortest_min: '1.3333',
      longest_min: '1.5800',
      target_s: '90.000',
      target_min: '1.5000',
      target_changed: '0',
      share_of_target_pct: '144.4',
    });
  });

  it('leaves empty what cannot be said of one part without a target', () => {
    expect(records[1]).toMatchObject({
      sd_s: '',
      sd_min: '',
      target_s: '',
      target_min: '',
      target_changed: '1',
      share_of_target_pct: '',
    });
  });

  it('says in its header, and nowhere else, that it is not for pay and no measure of a person', () => {
    const [header, ...rows] = written.trim().split('\r\n');
    expect(header).toMatch(/,for_planning_not_for_pay_not_a_measure_of_a_person$/);
    for (const row of rows) expect(row).toMatch(/,$/);
    expect(rows.join()).not.toMatch(/pay|person/);
  });

  it('marks a part’s code that a spreadsheet would run', () => {
    expect(records[1]!.part).toBe("'=WD-0716");
  });

  it('is written with semicolons, decimal commas and a byte order mark on request', () => {
    const comma = writeDayTable([day('2026-03-17', doors)], { profile: 'comma', byteOrderMark: true });
    expect(comma.startsWith('\uFEFFday;part')).toBe(true);
    expect(comma).toContain(';86,667;7,508;');
  });
});
