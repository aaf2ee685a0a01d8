import { signal } from '@preact/signals';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { afterSaving } from '../../src/application/after-saving';
import type { Saving } from '../../src/application/saving-queue';
import { FakeClock } from '../support/fake-clock';

const saved: Saving = { state: 'saved', unsaved: 0, problem: '', isInReserve: false };
const recorded: Saving = { ...saved, state: 'recorded', unsaved: 1 };
const notSaved: Saving = { ...recorded, state: 'not-saved' };
const settled = () => new Promise((resolve) => setTimeout(resolve));

describe('what follows from a record', () => {
  const calls: string[] = [];
  const next = (name: string) => () => calls.push(name);
  let clock = new FakeClock();
  let saving = signal(saved);
  let after = afterSaving(saving, clock);
  const pass = async (ms: number) => {
    clock.pass(ms);
    await settled();
  };
  beforeEach(async () => {
    calls.length = 0;
    clock = new FakeClock();
    saving = signal(saved);
    after = afterSaving(saving, clock);
    await pass(1);
  });

  it('comes once the record is saved, in a task after the word that it is', async () => {
    saving.value = recorded;
    after.call(next('fold'));
    after.call(next('show'));
    await pass(11);
    expect(calls).toEqual([]);
    saving.value = saved;
    await settled();
    expect(calls).toEqual([]);
    await pass(0);
    expect(calls).toEqual(['fold', 'show']);
    expect(after.isLate.value).toBe(false);
  });

  it('comes after 12 ms though nothing is saved, which is late until it is', async () => {
    saving.value = recorded;
    after.call(next('fold'));
    await pass(12);
    expect(calls).toEqual(['fold']);
    expect(after.isLate.value).toBe(true);
    saving.value = saved;
    expect(after.isLate.value).toBe(false);
    await pass(20);
    expect(calls).toEqual(['fold']);
  });

  it('waits no longer because another record follows', async () => {
    saving.value = recorded;
    after.call(next('first'));
    await pass(8);
    saving.value = { ...recorded, unsaved: 2 };
    after.call(next('second'));
    await pass(4);
    expect(calls).toEqual(['first', 'second']);
  });

  it('comes at once where nothing was recorded, where the log refuses, and behind a record that is late', async () => {
    after.call(next('nothing'));
    await pass(0);
    saving.value = notSaved;
    after.call(next('refused'));
    await pass(0);
    saving.value = recorded;
    await pass(12);
    after.call(next('behind'));
    await pass(0);
    expect(calls).toEqual(['nothing', 'refused', 'behind']);
  });

  it('comes although what came before it fails', async () => {
    const failed = vi.fn();
    process.once('uncaughtException', failed);
    saving.value = recorded;
    after.call(() => {
      throw new Error('refused');
    });
    after.call(next('fold'));
    saving.value = saved;
    await pass(0);
    process.removeListener('uncaughtException', failed);
    expect(calls).toEqual(['fold']);
    expect(failed).toHaveBeenCalledOnce();
  });
});
