import { describe, expect, it } from 'vitest';
import { cell as deCell } from '../../src/i18n/de/cell';
import { cell, cellGoverns } from '../../src/i18n/en/cell';
import { cellPeople } from '../../src/i18n/en/cell-people';
import { cellWhatIf } from '../../src/i18n/en/cell-what-if';

describe('the words of the cell', () => {
  it('say one cycle, one day and one part as one', () => {
    const told = [
      cell.tooFew('M', 1),
      cellGoverns.day('7.00', 1),
      cellWhatIf.exchange.faster('3.0', { name: 'O2', every: 8, before: 1 }),
      cellWhatIf.exchange.slower('3.0', { name: 'O2', every: 1, before: 8 }),
    ];
    expect(told.join(' ')).not.toMatch(/\b1 (whole cycles|days|parts)|once in 1\b/);
    expect(cellWhatIf.exchange.faster('3.0', { name: 'O2', every: 8, before: 1 })).toBe(
      '3.0 parts a day more, because “O2” comes once in 8 parts instead of with every part.',
    );
  });

  it('say of one element that it takes too long, and of two that each of them does', () => {
    expect(cellPeople.tooLong('0.50 min', ['E6'])).toContain('E6 alone takes longer than');
    expect(cellPeople.tooLong('0.50 min', ['E3', 'E6'])).toContain('E3 and E6 each take longer than');
  });

  it('keep a figure and its sign of per cent on one line', () => {
    expect([cell.percent('8'), deCell.percent('8')]).toEqual(['8\u00a0%', '8\u00a0%']);
  });
});
