import { describe, expect, it } from 'vitest';
import { type DemoCode, demoCodes } from '../../../src/demo/demo-parts';
import { cellCycle } from '../../../src/domain/cell/cell-cycle';
import { elementEffects, kindEffects } from '../../../src/domain/cell/element-effects';
import { nextStep } from '../../../src/domain/cell/next-step';
import { occasionals, spreadCell } from './demo-cell';

function part(code: DemoCode) {
  const work = { ...spreadCell(code, 400), occasionals: occasionals() };
  const effects = elementEffects(work);
  const cycle = cellCycle(work);
  return { partCode: code, cycle, effects, kinds: kindEffects(effects, cycle.partMs) };
}

describe('what the cell should do next', () => {
  it('is in the demo the hand work outside the machine’s time, and machine speed on V alone', () => {
    expect(nextStep(demoCodes.map(part))).toEqual({
      kind: 'outside',
      paysOn: ['S', 'M', 'L', 'T', 'V'],
      element: 'E2',
      machineOn: ['V'],
      tieOn: ['T'],
    });
  });

  it('is a faster machine where only V is made', () => {
    expect(nextStep([part('V')])).toMatchObject({ kind: 'machine', element: 'MC' });
  });

  it('is nothing where nothing is made', () => {
    expect(nextStep([])).toBeNull();
  });
});
