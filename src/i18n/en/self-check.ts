import { formatNumber } from '../format-number';
import { spoken } from '../spoken';

/** Words of the check of the tablet itself. */
export const selfCheckWords = spoken('selfCheckWords', {
  title: 'Check this tablet',
  text: 'Looks at clock, storage, screen and every record, and changes none.',
  looking: (records: number) =>
    `Looking … ${formatNumber(records)} ${records === 1 ? 'record' : 'records'} followed`,
  failed: (problem: string) => `The check could not be finished (${problem}).`,
  allFine: 'Nothing wants seeing to.',
  some: (count: number) =>
    count === 1 ? 'One thing wants seeing to.' : `${formatNumber(count)} things want seeing to.`,
  states: { fine: 'Fine', look: 'See to it', unknown: 'Not known' },
  names: {
    clock: 'Clock',
    saving: 'Time to save',
    screen: 'Screen stays on',
    installed: 'Installed',
    offline: 'Without a network',
    copy: 'Copy outside',
    records: 'Records',
  },
  clock: (ms: number) => `tells time in steps of ${formatNumber(ms, ms < 1 ? 2 : 1)} ms`,
  saving: (half: number, longest: number, writes: number) =>
    `half of ${writes} writes took ${formatNumber(half, 1)} ms at most, the slowest ${formatNumber(longest, 1)} ms. A tap goes to the journal too, which is not measured.`,
  notMeasured: 'could not be measured',
  screen: {
    kept: 'yes, while something is timed',
    refused: 'the system refused it just now',
    cannot: 'this browser cannot do it',
  },
  yes: 'yes',
  inTab: 'no: this is a browser tab',
  offline: 'opens: its files are on this tablet',
  notOffline: 'its files are not on this tablet yet',
  unread: 'could not be read',
  todo: {
    clock:
      'Times are no finer than that. Use another browser, or switch off in this one what rounds its clock.',
    saving: 'Taps keep their time, but “Saved” comes late. Close other apps, make room, restart the tablet.',
    lasting: 'Install the app, then let Records ask the browser again.',
    copies: 'Leave the private window, or use a browser that may keep what a site stores.',
    screen: 'Look for battery saving in the settings, or let the screen stay on while the tablet charges.',
    offline: 'Load the page once more while there is a network; it needs an https address.',
    copy: 'Make a copy under Records.',
    records: 'Make a copy now, and hand the text below to whoever helps.',
  },
  handOn: 'A text for whoever helps',
  holds: 'It holds these figures, the release and the browser; no record and no name.',
  copy: 'Copy the text',
  copied: 'Copied.',
  notCopied: 'This browser does not let it be copied: save it as a file.',
  share: 'Share …',
  download: 'Save as a file',
  offered: (name: string) => `Offered as a download: ${name}.`,
  again: 'Check again',
  back: 'Back to Records',
  browser: 'Browser',
  page: 'Screen',
  made: 'Made',
});
