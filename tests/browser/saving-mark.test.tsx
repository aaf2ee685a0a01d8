import { signal } from '@preact/signals';
import { render } from 'preact';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Saving } from '../../src/application/saving-queue';
import { type App, AppContext } from '../../src/screens/app';
import { SavingMark } from '../../src/screens/shell/saving-mark';

const saved: Saving = { state: 'saved', unsaved: 0, problem: '', isInReserve: false };
const moment = () => new Promise((resolve) => setTimeout(resolve));

describe('the mark of what is saved', () => {
  const saving = signal(saved);
  const isSavingLate = signal(false);
  const box = document.createElement('div');
  const mark = () => box.querySelector('p')!;
  const showFor = async (copies: 0 | 2) => {
    render(null, box);
    const app = { bench: { saving, isSavingLate }, copies } as unknown as App;
    render(
      <AppContext.Provider value={app}>
        <SavingMark />
      </AppContext.Provider>,
      box,
    );
    await moment();
  };
  beforeEach(async () => {
    saving.value = saved;
    document.body.append(box);
    await showFor(2);
  });
  afterEach(() => {
    render(null, box);
    box.remove();
  });

  it('knows at once that a record is on its way, and says so when that takes long', async () => {
    saving.value = { ...saved, state: 'recorded', unsaved: 1 };
    await moment();
    expect(mark().dataset.saving).toBe('recorded');
    expect(mark().textContent).toBe('Saved');
    isSavingLate.value = true;
    await moment();
    expect(mark().textContent).toBe('Recorded, saving …');
    saving.value = saved;
    isSavingLate.value = false;
    await moment();
    expect(mark().dataset.saving).toBe('saved');
    expect(mark().textContent).toBe('Saved');
  });

  it('cries out that records are not saved, and how many', async () => {
    saving.value = { state: 'not-saved', unsaved: 3, problem: 'QuotaExceededError', isInReserve: true };
    await moment();
    expect(mark().role).toBe('alert');
    expect(mark().textContent).toContain('Not saved: 3 records in reserve');
  });

  it('never says saved where nothing outlives the page', async () => {
    await showFor(0);
    expect(mark().dataset.saving).toBe('not-saved');
    expect(mark().textContent).not.toContain('Saved');
  });
});
