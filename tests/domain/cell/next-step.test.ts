import { describe, expect, it } from 'vitest';
import { type DemoCode, demoCodes } from '../../../src/demo/demo-parts';
import type { CellWork } from '../../../src/domain/cell/cell-work';
import { elementEffects } from '../../../src/domain/cell/element-effects';
import { nextStep } from '../../../src/domain/cell/next-step';
import { secondOut } from '../../../src/domain/cell/second-out';
import { meanCell, occasionals, spreadCell } from './demo-cell';

function part(code: DemoCode, cycles = 400) {
  const work = { ...spreadCell(code, cycles), occasionals: occasionals() };
  return {
    partCode: code,
    work,
    wholeCycles: cycles,
    effects: elementEffects(work),
    seconds: secondOut(work),
  };
}

/** Hand work alone: each element takes the same in every cycle. */
function byHand(partCode: string, seconds: Readonly<Record<string, number>>) {
  const elements = Object.entries(seconds).map(([name, took]) => {
    const timesMs = Array.from({ length: 8 }, () => 1_000 * took);
    return { name, place: 'external', work: 'manual', timesMs, meanMs: 1_000 * took } as const;
  });
  const work: CellWork = { elements, occasionals: [], complete: [...Array(8).keys()] };
  return { partCode, work, wholeCycles: 8, effects: elementEffects(work), seconds: secondOut(work) };
}

// The same analysis as in cell-cycle.test.ts: the machine governs in 0, 3, 14, 50 and 100 % of the cycles.
const seconds: Record<DemoCode, readonly [outside: number, inside: number, machine: number]> = {
  S: [1, 1, 0],
  M: [1, 0.97, 0.03],
  L: [1, 0.86, 0.14],
  T: [1, 0.5, 0.5],
  V: [1, 0, 1],
};

describe('a second less', () => {
  it.each(demoCodes)('gives on code %s what the share of cycles that it governs gives', (code) => {
    const { outside, inside, machine, other } = secondOut(spreadCell(code, 40_000));
    const [all, hands, boring] = seconds[code];
    expect(outside!.gained).toBeCloseTo(all, 9);
    // A second is some of what hands vary by, so that it is felt a little less than at the very first hair.
    expect(Math.abs(inside!.gained - hands)).toBeLessThan(0.07);
    expect(Math.abs(machine!.gained - boring)).toBeLessThan(0.07);
    expect(other).toBeNull();
  });

  it('of hands beside the machine and of the machine, at a tie, is worth less than one of loading', () => {
    const { inside, machine } = secondOut(spreadCell('T', 40_000));
    expect(inside!.gained + machine!.gained).toBeLessThan(1);
  });

  it('ends where the other governs: on M at 0.28 + 0.82 by hands, on V at 0.28 + 1.2235 by the machine', () => {
    expect(secondOut(meanCell('M')).inside!.leastMs / 60_000).toBeCloseTo(1.1, 6);
    expect(secondOut(meanCell('V')).machine!.leastMs / 60_000).toBeCloseTo(1.50346, 4);
  });

  it('of a kind that takes less than ten seconds is a tenth of it, and no time is no kind', () => {
    const work = meanCell('M');
    const timed = (name: string, ms: number): CellWork => ({
      ...work,
      elements: work.elements
        .filter(({ place }) => place !== 'external')
        .concat({ name, place: 'external', work: 'manual', timesMs: [ms], meanMs: ms }),
    });
    expect(secondOut(timed('E1', 2_000)).outside!.gained).toBeCloseTo(1, 9);
    expect(secondOut(timed('E1', 0)).outside).toBeNull();
  });
});

describe('what the cell should do next', () => {
  it('is in the demo the hand work outside the machine’s time, and machine speed on V alone', () => {
    expect(nextStep(demoCodes.map((code) => part(code)))).toMatchObject({
      kind: 'outside',
      first: { name: 'E2' },
      isMostBySecond: true,
      pays: {
        outside: { fully: ['S', 'M', 'L', 'T', 'V'], partly: [], not: [] },
        inside: { fully: ['S', 'M', 'L'], partly: ['T'], not: ['V'] },
        machine: { fully: ['V'], partly: ['L', 'T'], not: ['S', 'M'] },
        other: { fully: [], partly: [], not: ['S', 'M', 'L', 'T', 'V'] },
      },
    });
  });

  it('begins where a second gives most, and names what gives more for a tenth, which is longer and gives less for one', () => {
    const { first, mostByTenth } = nextStep(demoCodes.map((code) => part(code)))!;
    // As many of each: the machine of V takes longest of all, and with it the machine leads by share.
    expect(mostByTenth.name).toBe('MC');
    expect(mostByTenth.byTenth).toBeGreaterThan(2 * first.byTenth);
    expect(mostByTenth.bySecond).toBeLessThan(0.85 * first.bySecond);
  });

  it('begins by the parts as they are made together, where that is known', () => {
    const { kind, first } = nextStep([part('M'), part('V')], part('M'))!;
    expect(kind).toBe('outside');
    expect(first).toEqual(part('M').effects.find(({ name }) => name === 'E2'));
  });

  it('takes as many of each part where nothing tells more: a second less of what half of them have is half a second', () => {
    const { first, parts } = nextStep([byHand('BR', { Press: 3 }), byHand('PL', { Deburr: 47 })])!;
    expect(parts).toEqual(['BR', 'PL']);
    expect(first.name).toBe('Deburr');
    // 25 s a part as a mean; half a second less is 24.5 s.
    expect(first.bySecond).toBeCloseTo(25 / 24.5 - 1, 9);
    expect(first.byTenth).toBeCloseTo(25 / (25 - 4.7 / 2) - 1, 9);
  });

  it('speaks of a machine to the parts alone that have one', () => {
    const { pays, isWithoutMachine } = nextStep([part('V'), byHand('PL', { Deburr: 470 })])!;
    expect(pays.machine).toEqual({ fully: ['V'], partly: [], not: [] });
    expect(pays.inside).toEqual({ fully: [], partly: [], not: ['V'] });
    expect(pays.outside.fully).toEqual(['V', 'PL']);
    expect(isWithoutMachine).toBe(true);
    expect(nextStep([part('M'), part('V')])!.isWithoutMachine).toBe(false);
  });

  it('stands at the head of its own list wherever one part is made: the list and the advice have one measure', () => {
    for (const code of demoCodes) {
      const own = part(code);
      const { first } = nextStep([own])!;
      expect(own.effects[0]!.bySecond).toBeCloseTo(first.bySecond, 9);
      expect(own.effects[0]!.name).toBe(first.name);
    }
  });

  it('is a faster machine where only V is made: there is more of it than of loading', () => {
    expect(nextStep([part('V')])).toMatchObject({
      kind: 'machine',
      first: { name: 'MC' },
      mostByTenth: { name: 'MC' },
    });
  });

  it('is not said from four cycles, and of the other parts alone where one has only four', () => {
    expect(nextStep([part('M', 4)])).toBeNull();
    expect(nextStep([part('M', 4), part('S')])!.pays.outside.fully).toEqual(['S']);
  });

  it('is nothing where nothing is made', () => {
    expect(nextStep([])).toBeNull();
  });
});
