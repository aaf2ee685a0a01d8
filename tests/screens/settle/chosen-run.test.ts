import { describe, expect, it } from 'vitest';
import { withFirst, withLast } from '../../../src/screens/settle/chosen-run';

describe('the parts that are chosen to be put right', () => {
  it('stay one part when another first one is chosen', () => {
    expect(withFirst({ first: 113, last: 113 }, 10)).toMatchObject({ first: 10, last: 10 });
  });

  it('become a run when its other end is chosen, and keep that end when the first is chosen again', () => {
    const run = withLast({ first: 10, last: 10 }, 14);
    expect(run).toMatchObject({ first: 10, last: 14 });
    expect(withFirst(run, 12)).toMatchObject({ first: 12, last: 14 });
    expect(withFirst(run, 20)).toMatchObject({ first: 20, last: 20 });
  });

  it('keep an end that was chosen first, be it the beginning that stood there already', () => {
    const run = withLast({ first: 113, last: 113 }, 14);
    expect(run).toMatchObject({ first: 14, last: 14 });
    expect(withFirst(run, 10)).toMatchObject({ first: 10, last: 14 });
  });

  it('end no earlier than they begin', () => {
    expect(withLast({ first: 10, last: 14 }, 4)).toMatchObject({ first: 4, last: 4 });
  });
});
