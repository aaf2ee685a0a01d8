import { formatNumber } from '../format-number';
import { spoken } from '../spoken';

const parts = (count: number) => `${count} ${count === 1 ? 'part' : 'parts'}`;

/** Words of where a turn is heading, and of the parts that are wanted in it. */
export const outlook = spoken('outlook', {
  finish: (about: string, from: string, to: string) =>
    from === to ? `Done at ${about}` : `Done about ${about}, ${from} to ${to}`,
  byEnd: (time: string, from: number, to: number) =>
    from === to ? `${parts(from)} by ${time}` : `${from} to ${parts(to)} by ${time}`,
  byEndOf: (time: string, from: number, to: number, wanted: number) =>
    `${from === to ? from : `${from} to ${to}`} of ${wanted} by ${time}`,
  allDone: (wanted: number) => `All ${wanted} done`,
  notYet: 'Finish: told from 5 parts on',
  ask: 'How many parts are wanted?',
  learning: 'Learning: no finish is reckoned',
  states: { steady: 'Last 5: in time', slower: 'Last 5: over target' },
  lastParts: (count: number) => (count === 1 ? 'The last part' : `The last ${count} parts`),

  planTitle: 'Parts wanted in this turn',
  wanted: 'Good parts',
  set: 'Set',
  none: 'No number',
  fault: 'A whole number from 1 to 2000, please.',
  soFar: (good: number) => `${parts(good)} good so far.`,
  howTitle: 'How it is reckoned',
  howRange: (count: number, turns: number) =>
    `200 tries with the last ${parts(count)} of this turn${turns > 0 ? `, and with what ${turns === 1 ? 'the turn' : `the ${turns} turns`} before lost and how they changed` : ''}. The range is where 8 of 10 tries end. Planned breaks of the calendar are left out.`,
  paceRatio: (ratio: number) =>
    `The last parts took ${formatNumber(ratio, 2)} of their targets: all their time over all their targets.`,
  target: (what: string) => `Target: ${what}.`,
  sources: { typed: 'typed in', standard: 'the standard time', takt: 'takt, from calendar and demand' },
});
