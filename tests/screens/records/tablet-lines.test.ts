import { describe, expect, it } from 'vitest';
import type { TabletState } from '../../../src/application/records/check-tablet';
import { tabletLines } from '../../../src/screens/records/tablet-lines';
import { tabletText } from '../../../src/screens/records/tablet-text';

const sound: TabletState = {
  clockStepMs: 0.1,
  saving: { medianMs: 4, longestMs: 20, writes: 40 },
  isLasting: true,
  isForgetfulTab: false,
  roomBytes: 2_000_000_000,
  screen: 'kept',
  installation: 'installed',
  isOffline: true,
  copy: {
    isCopied: true,
    how: 'shared',
    madeAt: {} as never,
    ageMs: 60_000,
    recordsSince: 0,
    finishedSince: 0,
    isDue: false,
  },
  records: { count: 7, devices: 1, breakCount: 0 },
};
const own = { copies: 2, isDemo: false } as const;

/** Names of the lines that are not fine, of a sound tablet with this one thing otherwise. */
function amiss(other: Partial<TabletState>, around: Parameters<typeof tabletLines>[1] = own): string[] {
  return tabletLines({ ...sound, ...other }, around)
    .filter(({ state }) => state !== 'fine')
    .map(({ name, state }) => `${name}: ${state}`);
}

describe('the check of a tablet', () => {
  it('finds a sound one fine in every line, and then has nothing to do', () => {
    const lines = tabletLines(sound, own);
    expect(lines).toHaveLength(10);
    expect(amiss({})).toEqual([]);
    expect(lines.filter(({ todo }) => todo !== '')).toEqual([]);
  });

  it.each<[what: string, other: Partial<TabletState>, line: string]>([
    ['a clock in steps above 5 ms', { clockStepMs: 16.7 }, 'Clock: look'],
    [
      'half of the writes above 50 ms',
      { saving: { medianMs: 51, longestMs: 60, writes: 40 } },
      'Time to save: look',
    ],
    ['one write above 250 ms', { saving: { medianMs: 5, longestMs: 251, writes: 40 } }, 'Time to save: look'],
    ['a write that cannot be timed', { saving: null }, 'Time to save: unknown'],
    ['a browser that has promised nothing', { isLasting: false }, 'Promise of the browser: look'],
    ['a browser that does not say', { isLasting: null }, 'Promise of the browser: unknown'],
    ['room for less than 50 MB', { roomBytes: 49_000_000 }, 'Room left: look'],
    ['a screen that may go dark', { screen: 'refused' }, 'Screen stays on: look'],
    ['a tab', { installation: 'menu' }, 'Installed: look'],
    ['files that are not there yet', { isOffline: false }, 'Without a network: look'],
    ['a damaged record', { records: { count: 7, devices: 1, breakCount: 1 } }, 'Records: look'],
    ['records that cannot be read', { records: null }, 'Records: look'],
    [
      'records of which no copy was ever made',
      { copy: { isCopied: false, recordsSince: 3, finishedSince: 0, isDue: false } },
      'Copy outside: look',
    ],
  ])('sees %s', (_, other, line) => {
    expect(amiss(other)).toEqual([line]);
  });

  it('says what to do about each thing that wants seeing to, beside what was found or in it', () => {
    const worst: TabletState = {
      ...sound,
      clockStepMs: 100,
      saving: { medianMs: 400, longestMs: 900, writes: 40 },
      isLasting: false,
      screen: 'cannot',
      installation: 'offered',
      isOffline: false,
      records: { count: 7, devices: 1, breakCount: 2 },
      copy: { isCopied: false, recordsSince: 7, finishedSince: 5, isDue: true },
    };
    const lines = tabletLines(worst, { copies: 0, isDemo: false }).filter(({ state }) => state === 'look');
    expect(lines.map(({ name }) => name)).toHaveLength(9);
    expect(lines.filter(({ todo }) => todo === '')).toEqual([]);
  });

  it('asks for no copy of the demo shop', () => {
    const names = tabletLines(sound, { copies: 1, isDemo: true }).map(({ name }) => name);
    expect(names).not.toContain('Copy outside');
  });

  it('writes a text with the release, the browser and each line with its judgement', () => {
    const lines = tabletLines({ ...sound, isOffline: false }, own);
    const text = tabletText(lines, { release: '9.9', browser: 'B/1', screen: '3 × 4', madeAt: 'noon' });
    expect(text).toContain('Pacewright 9.9\nMade: noon\nBrowser: B/1\nScreen: 3 × 4\n');
    expect(text).toContain('[Fine] Clock: tells time in steps of 0.10 ms\n');
    expect(text).toContain('[See to it] Without a network: ');
    expect(text.match(/^\[/gm)).toHaveLength(lines.length);
  });
});
