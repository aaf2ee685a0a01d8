import Papa from 'papaparse';
import readXlsxFile from 'read-excel-file/node';
import { describe, expect, it } from 'vitest';
import type { PartAccount } from '../../src/domain/day/part-account';
import { type DaySummary, summariseDay } from '../../src/domain/day/summarise-day';
import { dayPartsTable } from '../../src/exchange/day-parts-table';
import { hoursTable } from '../../src/exchange/hours-table';
import { lostTimeTable } from '../../src/exchange/lost-time-table';
import { notesTable } from '../../src/exchange/notes-table';
import { turnsTable } from '../../src/exchange/turns-table';
import type { TypedTable } from '../../src/exchange/typed-table';
import { weeksTable } from '../../src/exchange/weeks-table';
import { writeSpreadsheet } from '../../src/exchange/write-spreadsheet';
import { writeTable } from '../../src/exchange/write-table';
import { turnsOf, week1, weeks3And4 } from '../demo/demo-shop';
import { summariesOf } from '../demo/demo-summaries';

/** Net times 80 85.2 94.8 s: mean 86.667 s = 1.4444 min, s 7.508 s = 0.1251 min, by hand (deviations −6.667 −1.467 8.133). */
const doors: PartAccount = {
  part: 'part-1',
  partCode: 'WD-1310',
  n: 3,
  counted: 3,
  good: 1,
  rework: 1,
  scrap: 1,
  netMs: 260_000,
  grossMs: 290_000,
  deviationMs: 7508.2177,
  shortestMs: 80_000,
  longestMs: 94_800,
  targetMs: 90_000,
  targetChanged: false,
  against: { n: 3, good: 2, netMs: 260_000, targetMs: 180_000, share: 260 / 180 },
  allowedMs: 270_000,
  takenMs: 260_000,
  earnedMs: 180_000,
  untargeted: 0,
  attendedMs: 300_000,
  peopleOver: 0,
  peopleInside: 0,
};
const single: PartAccount = {
  ...doors,
  partCode: '=WD-0716',
  n: 1,
  counted: 1,
  good: 1,
  rework: 0,
  scrap: 0,
  netMs: 80_000,
  deviationMs: null,
  longestMs: 80_000,
  targetMs: null,
  targetChanged: true,
  against: null,
};
const day = (name: string, ...parts: PartAccount[]): DaySummary => ({
  ...summariseDay(name, [], null),
  parts,
});
const read = (text: string) =>
  Papa.parse<Record<string, string>>(text, { header: true, skipEmptyLines: true }).data;

describe('the table of days and parts', () => {
  const written = writeTable(
    dayPartsTable([day('2026-03-17', doors, single), day('2026-03-18'), day('2026-03-19', single)]),
  );
  const records = read(written);

  it('has one row a day and part, and none for a day without parts', () => {
    expect(written.split('\r\n')[0]).toBe(
      'day,part,n,counted,good,rework,scrap,mean_s,sd_s,shortest_s,longest_s,mean_min,sd_min,shortest_min,' +
        'longest_min,target_s,target_min,target_changed,share_of_target_pct,gross_mean_min,' +
        'attended_min_per_good_part,first_pass_yield_pct,for_planning_not_for_pay_not_a_measure_of_a_person',
    );
    expect(records.map((record) => [record.day, record.n])).toEqual([
      ['2026-03-17', '3'],
      ['2026-03-17', '1'],
      ['2026-03-19', '1'],
    ]);
  });

  it('gives times in seconds and in decimal minutes, beside the target, and each part’s three averages', () => {
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
      // 290 s ÷ 3, 300 s ÷ 2 good at last, 1 of 3 good the first time.
      gross_mean_min: '1.6111',
      attended_min_per_good_part: '2.5000',
      first_pass_yield_pct: '33.33',
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
    const comma = writeTable(dayPartsTable([day('2026-03-17', doors)]), {
      profile: 'comma',
      byteOrderMark: true,
    });
    expect(comma.startsWith('\uFEFFday;part')).toBe(true);
    expect(comma).toContain(';86,667;7,508;');
  });
});

describe('the table of weeks', () => {
  it('has the demo’s weeks, and in each of them mix ÷ efficiency is the time per good part', () => {
    const weeks = read(writeTable(weeksTable([...summariesOf(week1), ...summariesOf(weeks3And4)])));
    expect(weeks.map(({ week, days, good_at_last }) => [week, days, good_at_last])).toEqual([
      ['2026-W10', '5', '730'],
      ['2026-W12', '5', '1283'],
      ['2026-W13', '5', '1293'],
    ]);
    for (const week of weeks) {
      const [mix, efficiency, perGood] = [
        'mix_min_per_good_part',
        'efficiency_pct',
        'attended_min_per_good_part',
      ].map((name) => Number(week[name]));
      expect(mix! / (efficiency! / 100)).toBeCloseTo(perGood!, 3);
    }
  });
});

describe('the table of turns', () => {
  const turns = turnsTable(turnsOf(weeks3And4));

  it('has categories that add up to the elapsed time of each turn', () => {
    const records = read(writeTable(turns));
    expect(records).toHaveLength(20);
    for (const record of records) {
      const sum = Object.entries(record)
        .filter(([name]) => /_min$/.test(name) && name !== 'elapsed_min')
        .reduce((total, [, minutes]) => total + Number(minutes), 0);
      expect(Math.abs(sum - Number(record.elapsed_min))).toBeLessThan(0.05);
    }
  });

  it('count as good what is good at last: 2576 in two weeks, and every part once', () => {
    // The daily good counts of the independent simulation of the same shop, added up.
    const records = read(writeTable(turns));
    const sum = (name: string) => records.reduce((total, record) => total + Number(record[name]), 0);
    expect(sum('good_at_last')).toBe(2576);
    expect(sum('good_at_last') + sum('scrap')).toBe(sum('parts_done'));
  });

  it('say when each ended and whether it was entered later; an open one has no end', () => {
    const [ended, open] = read(
      writeTable(
        turnsTable([
          { ...turnsOf(weeks3And4)[0]!, status: 'ended' },
          { ...turnsOf(weeks3And4)[1]!, status: 'running' },
        ]),
      ),
    );
    expect(ended!.entered_later).toBe('0');
    expect(Date.parse(ended!.ended_at!) - Date.parse(ended!.began_at!)).toBeCloseTo(
      Number(ended!.elapsed_min) * 60_000,
      -3,
    );
    expect(open!.ended_at).toBe('');
  });

  it('names nobody', () => {
    expect(writeTable(turns)).not.toMatch(/\b(K7|M2|R4)\b/);
  });
});

describe('the tables of lost time, hours and notes', () => {
  it('add up to the lost time and the earned time of the days they are of', () => {
    const days = summariesOf(weeks3And4);
    const rows = read(writeTable(lostTimeTable(days, ({ reason }) => reason)));
    const sum = (name: string) => rows.reduce((total, row) => total + Number(row[name]), 0);
    // The demo's own figures: 280.5 min recorded, 266.3 min of output.
    expect(sum('lost_min')).toBeCloseTo(280.5, 0);
    expect(sum('cost_in_output_min')).toBeCloseTo(266.3, 0);
  });

  it('give an hour its plan, what it earned, and how far the day is by then', () => {
    const hour = {
      fromWallMs: 0,
      offsetMin: 60,
      plannedMs: 3_600_000,
      earnedMs: 3_000_000,
      setUpMs: 0,
      goodParts: 40,
    };
    const soFar = { plannedSoFarMs: 7_200_000, earnedSoFarMs: 6_300_000 };
    const cause = { reason: 'material', label: 'No doors', lostMs: 480_000 };
    const hours = [{ ...hour, ...soFar, isSilent: false, cause }];
    const [row] = read(writeTable(hoursTable([{ day: '2026-03-17', hours }], ({ label }) => label)));
    expect(row).toMatchObject({
      hour_from: '1970-01-01T01:00:00.000+01:00',
      planned_min: '60.00',
      earned_min: '50.00',
      difference_so_far_min: '-15.00',
      most_lost_to: 'No doors',
      most_lost_min: '8.00',
    });
  });

  it('have notes in the order of their days, and nobody’s code', () => {
    const at = { run: 'r', monoMs: 0, wallMs: 0, zone: 'UTC', offsetMin: 0 };
    const note = { key: 'k', at, by: 'FM7', day: '2026-03-18', text: 'Blade', isChange: false };
    const written = writeTable(
      notesTable([note, { ...note, day: '2026-03-17', text: 'New racks', isChange: true }]),
    );
    expect(read(written).map((row) => [row.day, row.note, row.work_changed])).toEqual([
      ['2026-03-17', 'New racks', '1'],
      ['2026-03-18', 'Blade', '0'],
    ]);
    expect(written).not.toContain('FM7');
  });
});

describe('the spreadsheet', () => {
  // Read back by another package, which knows nothing of how it was written.
  const back = async (about: string[], ...tables: TypedTable[]) => {
    const bytes = Buffer.from(writeSpreadsheet(about, tables));
    return (await readXlsxFile(bytes)) as unknown as { sheet: string; data: unknown[][] }[];
  };

  it('says on its first sheet what it is, and has a sheet for each table', async () => {
    const sheets = await back(['No payroll record'], weeksTable([]), turnsTable([]));
    expect(sheets.map(({ sheet }) => sheet)).toEqual(['about', 'weeks', 'turns']);
    expect(sheets[0]!.data).toEqual([['about'], ['No payroll record']]);
  });

  it('has days as days, numbers as numbers with all their digits, and empty cells as empty', async () => {
    const [, { data }] = (await back([], dayPartsTable([day('2026-03-17', doors, single)]))) as [
      unknown,
      { data: unknown[][] },
    ];
    expect((data[1]![0] as Date).toISOString()).toBe('2026-03-17T00:00:00.000Z');
    expect(data[1]!.slice(1, 9)).toEqual(['WD-1310', 3, 3, 1, 1, 1, 260 / 3, 7.5082177]);
    expect(data[2]![8]).toBeNull();
    // A text is no formula here, and needs no mark against being run.
    expect(data[2]![1]).toBe('=WD-0716');
  });

  it('keeps whatever a shop writes in a code, but what no such file can hold', async () => {
    const odd = { ...single, partCode: '<Größe "7½" & \u0001\ud800 7>' };
    const [, { data }] = (await back([], dayPartsTable([day('2026-03-17', odd)]))) as [
      unknown,
      { data: unknown[][] },
    ];
    expect(data[1]![1]).toBe('<Größe "7½" &  7>');
  });
});
