import { describe, expect, it } from 'vitest';
import { activityChart } from '../../../src/domain/cell/activity-chart';
import { changedWork, noChange } from '../../../src/domain/cell/cell-change';
import { MINUTE_MS, meanCell } from './demo-cell';

const minutes = (ms: number) => Number((ms / MINUTE_MS).toFixed(4));

describe('the multiple-activity chart', () => {
  it('of M lets the machine wait 0.3988 of 1.2188 minutes, and the operator not at all', () => {
    const { roundMs, lanes } = activityChart(meanCell('M'));
    expect(minutes(roundMs)).toBe(1.2188);
    expect(lanes.map(({ who, waitingMs }) => [who, minutes(waitingMs)])).toEqual([
      ['operator', 0],
      ['machine', 0.3988],
    ]);
  });

  it('of V lets the operator wait until the machine is done', () => {
    const [operator, machine] = activityChart(meanCell('V')).lanes;
    expect(operator!.activities.at(-1)).toMatchObject({ state: 'waiting' });
    expect(minutes(operator!.waitingMs)).toBe(0.4251);
    // The machine stands while it is served.
    expect(machine!.activities[0]).toMatchObject({ state: 'waiting', fromMs: 0 });
    expect(minutes(machine!.activities[0]!.toMs)).toBe(0.28);
  });

  it('fills every column from 0 to the end without a gap or an overlap, whatever is changed', () => {
    const moved = { E3: 'other', E6: 'other' } as const;
    for (const machines of [1, 2, 3, 4]) {
      for (const code of ['S', 'T', 'V'] as const) {
        const work = changedWork(meanCell(code), { ...noChange, moved });
        const { lanes, roundMs } = activityChart(work, machines);
        expect(lanes).toHaveLength(machines + 2);
        for (const { activities, workingMs, waitingMs } of lanes) {
          let atMs = 0;
          for (const { fromMs, toMs } of activities) {
            expect(Math.abs(fromMs - atMs)).toBeLessThan(1e-6);
            atMs = toMs;
          }
          expect(atMs).toBeCloseTo(roundMs, 6);
          expect(workingMs + waitingMs).toBeCloseTo(roundMs, 6);
        }
      }
    }
  });

  it('lets a machine’s second element go on at the top of the next round', () => {
    const work = meanCell('V');
    const halves = work.elements.flatMap((own) =>
      own.place === 'machine'
        ? [0.8, 0.2].map((share) => ({ ...own, name: `${share}`, meanMs: share * own.meanMs }))
        : [own],
    );
    const { lanes, roundMs } = activityChart({ ...work, elements: halves }, 2);
    const second = lanes.find(({ who, number }) => who === 'machine' && number === 2)!;
    expect(second.activities.map(({ name }) => name)).toEqual(['0.8', '0.2', '', '0.8']);
    expect(minutes(second.workingMs)).toBe(1.6486);
    expect(second.activities.every(({ toMs }) => toMs <= roundMs * (1 + 1e-9))).toBe(true);
  });

  it('shows time in which the operator must watch as attention, neither work nor waiting', () => {
    const work = meanCell('M');
    const watching = {
      ...work,
      elements: work.elements.map((own) =>
        own.name === 'E5' ? { ...own, work: 'attention' as const } : own,
      ),
    };
    const [operator] = activityChart(watching).lanes;
    expect(operator!.activities.filter(({ state }) => state === 'attending').map(({ name }) => name)).toEqual(
      ['E5'],
    );
  });

  it('of a cell without a machine has the operator alone', () => {
    const work = meanCell('M');
    const byHand = { ...work, elements: work.elements.filter(({ place }) => place !== 'machine') };
    expect(activityChart(byHand).lanes.map(({ who }) => who)).toEqual(['operator']);
  });

  it('leaves an element of no time out of the drawing', () => {
    const work = changedWork(meanCell('M'), { ...noChange, elementPct: { E4: 0 } });
    const [operator] = activityChart(work).lanes;
    expect(operator!.activities.map(({ name }) => name)).not.toContain('E4');
  });
});
