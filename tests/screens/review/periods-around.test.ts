import { describe, expect, it } from 'vitest';
import { periodsAround } from '../../../src/screens/review/compare/periods-around';
import { placeOf } from '../../../src/screens/review/review-place';

const days = ['2026-03-20', '2026-03-19', '2026-03-18', '2026-03-17', '2026-03-16', '2026-03-13'];

describe('the periods that are suggested', () => {
  it('leave the time between two changes out: it was learning', () => {
    const { periods, title } = periodsAround(days, [
      { day: '2026-03-19', text: 'Known by all' },
      { day: '2026-03-17', text: 'One by one' },
    ]);
    expect(periods).toEqual({
      beforeFrom: '2026-03-13',
      beforeTo: '2026-03-16',
      afterFrom: '2026-03-19',
      afterTo: '2026-03-20',
    });
    expect(title).toBe('One by one');
  });

  it('are the older and the newer half of the days where nothing was noted in them', () => {
    const { periods } = periodsAround(days, [{ day: '2026-01-01', text: 'Long ago' }]);
    expect(periods).toMatchObject({ beforeTo: '2026-03-17', afterFrom: '2026-03-18' });
  });

  it('are days that were worked, also with a single day', () => {
    const [only] = days;
    expect(periodsAround([only!], []).periods).toEqual({
      beforeFrom: only,
      beforeTo: only,
      afterFrom: only,
      afterTo: only,
    });
  });
});

describe('the place of an address', () => {
  it('is one of the four questions, and the day for everything else', () => {
    expect(['weeks', 'before-after', 'promises', '2026-03-02', '', 'nowhere'].map(placeOf)).toEqual([
      'weeks',
      'before-after',
      'promises',
      'day',
      'day',
      'day',
    ]);
  });
});
