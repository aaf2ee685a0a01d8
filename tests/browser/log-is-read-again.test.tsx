import { render } from 'preact';
import { afterEach, describe, expect, it } from 'vitest';
import { Bench } from '../../src/application/bench';
import { addPerson } from '../../src/application/shop/add-person';
import { type App, AppContext } from '../../src/screens/app';
import { useLogChanges } from '../../src/screens/use-log-changes';
import { InMemoryRecordLog } from '../../src/storage/in-memory-record-log';
import { FakeClock } from '../support/fake-clock';

const settled = () => new Promise((resolve) => setTimeout(resolve, 20));

describe('what is read from the log', () => {
  const box = document.createElement('div');
  afterEach(() => render(null, box));

  it('is read again when a record was refused, and again when it is saved at the second try', async () => {
    const log = new InMemoryRecordLog('t');
    const clock = new FakeClock();
    const bench = await Bench.open(log, clock);
    const { append } = log;
    const reads: string[] = [];
    function Reader() {
      const changes = useLogChanges();
      if (reads.at(-1) !== changes) reads.push(changes);
      return null;
    }
    render(
      <AppContext.Provider value={{ bench } as unknown as App}>
        <Reader />
      </AppContext.Provider>,
      box,
    );
    addPerson(bench, 'K7');
    await settled();
    expect(reads).toHaveLength(2);
    log.append = () => Promise.reject(new DOMException('gone', 'AbortError'));
    addPerson(bench, 'M2');
    await settled();
    expect(reads).toHaveLength(3);
    log.append = append;
    clock.pass(2_000);
    await settled();
    expect(bench.saving.peek().state).toBe('saved');
    expect(reads).toHaveLength(4);
  });
});
