import { describe, expect, it } from 'vitest';
import { combinationTable } from '../../../src/domain/study/combination-table';
import type { StudyRow } from '../../../src/domain/study/study-row';
import { summariseStudy } from '../../../src/domain/study/summarise-study';
import { fixtureRows } from './demo-rows';

type Step = [string, number, Partial<StudyRow>?];

/** One reading an element, in seconds; made up. */
function table(...steps: Step[]) {
  const rows = steps.map(
    ([element, seconds, change], place): StudyRow => ({
      ...fixtureRows()[0]!,
      element,
      elementNo: place + 1,
      observedMs: seconds * 1_000,
      ratingPct: 100,
      cycle: 1,
      ...change,
    }),
  );
  return combinationTable(summariseStudy(rows))!;
}
const bars = ({ steps }: ReturnType<typeof table>) =>
  steps.map(({ element, bars: own }) =>
    [element, ...own.map(({ kind, fromMs, toMs }) => `${kind} ${fromMs / 1_000}–${toMs / 1_000}`)].join(' '),
  );
const internal = { placement: 'internal' } as const;
const machine = { work: 'machine' } as const;

describe('the combination table', () => {
  it('draws the machine beside the internal work, and the operator waiting until it stops', () => {
    const drawn = table(
      ['Load', 2],
      ['Bore', 5, machine],
      ['Walk', 1, { ...internal, work: 'walking' }],
      ['Clean', 3, internal],
    );
    expect(bars(drawn)).toEqual([
      'Load manual 0–2',
      'Bore automatic 2–7',
      'Walk walking 2–3',
      'Clean manual 3–6 waiting 6–7',
    ]);
    expect(drawn).toMatchObject({
      cycleMs: 7_000,
      totals: { manual: 5_000, walking: 1_000, automatic: 5_000, waiting: 1_000 },
    });
  });

  it('lets a run that passes the end of the cycle come in again at zero', () => {
    const drawn = table(['Clean', 4, internal], ['Load', 2], ['Bore', 3, machine]);
    expect(bars(drawn)).toEqual(['Clean manual 0–4', 'Load manual 4–6', 'Bore automatic 0–3']);
    expect(drawn.cycleMs).toBe(6_000);
  });

  it('names the element with whose end the machine starts', () => {
    const drawn = table(['Load', 2], ['Clean', 3, internal], ['Bore', 5, machine]);
    expect(drawn.steps.map(({ startsAfter }) => startsAfter)).toEqual(['', '', 'Load']);
  });

  it('starts the machine before the internal work, wherever the method lists it', () => {
    const drawn = table(['Load', 2], ['Clean', 3, internal], ['Bore', 5, machine]);
    expect(bars(drawn)).toEqual(['Load manual 0–2', 'Clean manual 2–5 waiting 5–7', 'Bore automatic 2–7']);
  });

  it('has the cycle of the summary: of the invented shop’s study normal time less what comes now and then', () => {
    const summary = summariseStudy(fixtureRows());
    expect(combinationTable(summary)!.cycleMs).toBeCloseTo(summary.normalTimeMs! - summary.occasionalMs, 6);
  });

  it('has none while an element has no time', () => {
    const rows = fixtureRows().map((row) =>
      row.element === 'E5 get next' ? { ...row, excluded: 'interruption' } : row,
    );
    expect(combinationTable(summariseStudy(rows))).toBeNull();
  });
});
