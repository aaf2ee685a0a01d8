import { render } from 'preact';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { Bench } from '../../src/application/bench';
import { addPerson } from '../../src/application/shop/add-person';
import { definePart } from '../../src/application/shop/define-part';
import { enterTurn as words } from '../../src/i18n/en/enter-turn';
import { settle } from '../../src/i18n/en/settle';
import { shell } from '../../src/i18n/en/shell';
import { type App, AppContext } from '../../src/screens/app';
import { EnterTurnForm } from '../../src/screens/settle/enter-turn-form';
import { InMemoryRecordLog } from '../../src/storage/in-memory-record-log';
import { everything } from '../domain/study/study-at-the-bench';
import { FakeClock } from '../support/fake-clock';

const settled = () => new Promise((resolve) => setTimeout(resolve, 20));

describe('a turn that is written down', () => {
  const box = document.createElement('div');
  let log: InMemoryRecordLog;
  let clock: FakeClock;
  let bench: Bench;
  let isOpen = false;

  const open = async () => {
    isOpen = true;
    render(
      <AppContext.Provider value={{ bench } as unknown as App}>
        <EnterTurnForm
          day="2026-03-01"
          who={{ by: 'F1', why: '', isAtStation: false }}
          setWho={() => {}}
          close={() => {
            isOpen = false;
            render(null, box);
          }}
        />
      </AppContext.Provider>,
      box,
    );
    await settled();
  };
  const type = async (label: string, text: string) => {
    const input = [...box.querySelectorAll('input')].find(
      (one) => one.ariaLabel === label || one.closest('label')?.textContent === label,
    )!;
    input.value = text;
    input.dispatchEvent(new Event('input', { bubbles: true }));
    await settled();
  };
  const press = async (name: string) => {
    [...box.querySelectorAll('button')].find(({ textContent }) => textContent === name)!.click();
    await settled();
  };
  const tell = async () => {
    await open();
    await type(words.person, 'K7');
    await type(words.from, '7:00');
    await type(words.to, '8:00');
    await type(words.done(1), '20');
    await press(words.next);
  };
  const enter = async () => {
    await type(settle.reason, 'on paper');
    await press(words.enter);
  };
  const fault = () => box.querySelector('[role=alert]')?.textContent;

  beforeEach(async () => {
    document.body.append(box);
    log = new InMemoryRecordLog('t');
    clock = new FakeClock();
    bench = await Bench.open(log, clock);
    addPerson(bench, 'K7');
    definePart(bench, 'M', '');
    await settled();
  });
  afterEach(() => {
    render(null, box);
    box.remove();
  });

  it('is not written down a second time while it is on its way or the log refuses it', async () => {
    await tell();
    let refuse: (why: Error) => void = () => {};
    const { append } = log;
    log.append = () => new Promise((_, reject) => (refuse = reject));
    await enter();
    expect(isOpen).toBe(false);
    await tell();
    expect(fault()).toBe(shell.recorded);
    expect(box.textContent).not.toContain(words.willWrite);
    refuse(new DOMException('full', 'QuotaExceededError'));
    await settled();
    await press(words.next);
    expect(fault()).toBe(shell.notSaved(1, false));
    expect(box.textContent).not.toContain(words.willWrite);
    log.append = append;
    clock.pass(2_000);
    await settled();
    await press(words.next);
    expect(fault()).toBe(words.faults.inTheWay('K7', '07:00', '08:00'));
    expect((await everything(log)).filter(({ fact }) => fact.kind === 'turn-started')).toHaveLength(1);
  });

  it('may be written down at the same press once what was on its way is saved, and the fault is gone', async () => {
    let save: () => void = () => {};
    const { append } = log;
    log.append = (records) => new Promise((done) => (save = () => done(append.call(log, records))));
    addPerson(bench, 'K8');
    await tell();
    expect(fault()).toBe(shell.recorded);
    save();
    await settled();
    await press(words.next);
    expect(fault()).toBeUndefined();
    expect(box.textContent).toContain(words.willWrite);
  });
});
