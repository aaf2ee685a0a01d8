import { describe, expect, it } from 'vitest';
import { Bench } from '../../../src/application/bench';
import { keptDay } from '../../../src/screens/review/kept-day';
import { InMemoryRecordLog } from '../../../src/storage/in-memory-record-log';
import { FakeClock } from '../../support/fake-clock';

const aBench = () => Bench.open(new InMemoryRecordLog('t'), new FakeClock());

describe('the day that was chosen', () => {
  it('is kept until a newer day begins, for its own records alone', async () => {
    const bench = await aBench();
    expect(keptDay.of(bench, '2026-03-27')).toBe('');
    keptDay.keep(bench, { day: '2026-03-24', newest: '2026-03-27' });
    expect(keptDay.of(bench, '2026-03-27')).toBe('2026-03-24');
    expect(keptDay.of(bench, '2026-03-30')).toBe('');
    expect(keptDay.of(await aBench(), '2026-03-27')).toBe('');
  });
});
