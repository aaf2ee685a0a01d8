import { describe, expect, it } from 'vitest';
import { dayFigures } from '../../../src/domain/day/day-figures';
import { summariseDay } from '../../../src/domain/day/summarise-day';
import { daysRun } from '../../../src/domain/weeks/days-run';
import { meanChartAlarms } from '../../../src/domain/weeks/mean-chart-alarms';
import { type PersonDay, personFigures } from '../../../src/domain/weeks/person-figures';
import { areStandardsTold, suspectStandards } from '../../../src/domain/weeks/suspect-standards';
import { shop, weeks3And4 } from '../../demo/demo-shop';
import { summariesOf, turnsToSummarise } from '../../demo/demo-summaries';

const days = summariesOf(weeks3And4);

describe('the right chart for daily figures', () => {
  // Expected limits: the independent simulation of the same shop.
  const limits = (value: (day: (typeof days)[number]) => number) =>
    daysRun(
      days.map((day) => ({ day: day.day, value: value(day) })),
      [],
    )[0]!;

  it('has the limits 77.2 and 116.7 % for the efficiency of weeks 3 and 4, and no signal', () => {
    const run = limits((day) => 100 * dayFigures(day).efficiency!);
    expect([run.limits!.lower, run.limits!.upper].map((limit) => limit.toFixed(1))).toEqual([
      '77.2',
      '116.7',
    ]);
    expect(run.limits!.meanMovingRange).toBeCloseTo(7.43, 2);
    expect(run.points.flatMap(({ signals }) => signals)).toEqual([]);
    expect(run.standing).toBe('provisional');
  });

  it('has the limits 1.150 and 2.127 for working minutes per good part, within 0.002', () => {
    const { lower, centre, upper } = limits((day) => day.workingMs / day.good / 60_000).limits!;
    expect(centre).toBeCloseTo(1.638, 3);
    expect(Math.abs(lower - 1.15)).toBeLessThan(0.002);
    expect(Math.abs(upper - 2.127)).toBeLessThan(0.002);
  });

  it('cries wolf as a chart of means: half the days and more lie outside on nothing but mix and crew', () => {
    // The simulation has 5 of 10 at ± 0.072. A tap closes a cycle that holds the next part's loading, which
    // makes single times spread less: the limits are tighter still, and one more day lies outside.
    const { alarms, reachMs } = meanChartAlarms(days)!;
    expect(alarms).toBe(6);
    expect(reachMs / 60_000).toBeCloseTo(0.065, 3);
  });

  it('says nothing of means from one day', () => {
    expect(meanChartAlarms(days.slice(0, 1))).toBeNull();
    expect(meanChartAlarms([])).toBeNull();
  });
});

describe('standards that look wrong', () => {
  it('are none in the demo shop', () => {
    expect(suspectStandards(days)).toEqual([]);
  });

  it('are found where a target was typed 25 % too short, by part and by nobody’s name', () => {
    const tall = shop.parts.find(({ code }) => code === 'T')!.id;
    const wrong = Array.from({ length: 10 }, (_, place) => {
      const turns = turnsToSummarise({ from: 11 + place, to: 11 + place }).map((of) => ({
        ...of,
        turn: {
          ...of.turn,
          cycles: of.turn.cycles.map((cycle) =>
            cycle.part === tall ? { ...cycle, targetMs: 0.75 * cycle.targetMs! } : cycle,
          ),
        },
      }));
      return summariseDay(`2026-03-${place + 10}`, turns, null);
    });
    const [found, ...others] = suspectStandards(wrong);
    expect(others).toEqual([]);
    expect(found).toMatchObject({ partCode: 'T' });
    expect(found!.against).toBeGreaterThan(1.2);
  });

  it('are not told from four days', () => {
    expect(suspectStandards(days.slice(0, 4))).toEqual([]);
    expect(areStandardsTold(days.slice(0, 4))).toBe(false);
    expect(areStandardsTold(days.slice(0, 5))).toBe(true);
    // Of one part alone nothing can be told, however many days there are.
    const alone = days.map((day) => ({
      ...day,
      parts: day.parts.filter(({ partCode }) => partCode === 'M'),
    }));
    expect(areStandardsTold(alone)).toBe(false);
  });
});

describe('figures of single persons', () => {
  const on = (person: string, day: number, share: number): PersonDay => ({
    person,
    day: `2026-03-0${day}`,
    parts: 10,
    takenMs: share * 900_000,
    allowedMs: 900_000,
  });
  const five = (person: string, share: number) =>
    [1, 2, 3, 4, 5].map((day) => on(person, day, share + day / 100));

  it('stand in the order of the codes, whatever they are', () => {
    const of = personFigures([...five('R4', 0.8), ...five('K7', 1.2), ...five('M2', 0.9)]);
    expect(of.map(({ person }) => person)).toEqual(['K7', 'M2', 'R4']);
  });

  it('are told from five days on, and of four nothing but that they are four', () => {
    const [k7, m2] = personFigures([...five('K7', 1), ...five('M2', 1).slice(1)]);
    expect(k7!.share).toBeCloseTo(1.03, 9);
    expect(m2).toMatchObject({ days: 4, share: null, halfWidth: null });
  });

  it('count two turns of one day as one day', () => {
    const [k7] = personFigures([...five('K7', 1).slice(1), on('K7', 2, 1.1)]);
    expect(k7!.days).toBe(4);
  });

  it('are about the mix of each: a person with the large parts is at the target like one with the small ones', () => {
    const large = [1, 2, 3, 4, 5].map((day) => ({
      ...on('K7', day, 1),
      takenMs: 2_000_000,
      allowedMs: 2_000_000 - day,
    }));
    const small = [1, 2, 3, 4, 5].map((day) => ({
      ...on('M2', day, 1),
      takenMs: 500_000,
      allowedMs: 500_000 - day,
    }));
    const [k7, m2] = personFigures([...large, ...small]);
    expect(k7!.share).toBeCloseTo(m2!.share!, 4);
  });
});
