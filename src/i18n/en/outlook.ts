import { formatNumber } from '../format-number';
import { spoken } from '../spoken';

const parts = (count: number) => `${count} ${count === 1 ? 'part' : 'parts'}`;

/** Words of where a turn is heading, and of the parts that are wanted in it. */
export const outlook = spoken('outlook', {
  finish: (about: string, from: string, to: string) =>
    from === to ? `Done at ${about}` : `Done about ${about} (${from}–${to})`,
  byEnd: (time: string, about: number, from: number, to: number) =>
    from === to ? `${parts(about)} by ${time}` : `About ${parts(about)} by ${time} (${from}–${to})`,
  byEndOf: (time: string, about: number, from: number, to: number, wanted: number) =>
    from === to
      ? `${about} of ${wanted} by ${time}`
      : `About ${about} of ${wanted} by ${time} (${from}–${to})`,
  allDone: (wanted: number) => (wanted === 1 ? 'The one part is done' : `All ${wanted} done`),
  atTarget: (time: string) => `At target: done at ${time}`,
  notYet: 'Too early to tell: from 10 counted parts on',
  ask: 'Parts wanted?',
  learning: 'Learning: no finish is reckoned',
  states: { steady: 'Last 5: near target or less', slower: 'Last 5: over target' },
  positionLater: 'Position: from the first part on',
  lastParts: (count: number) => (count === 1 ? 'The last part' : `The last ${count} parts`),

  planTitle: 'Parts wanted, and end of shift',
  wanted: 'Good parts',
  until: 'Shift ends at',
  left: (left: number, wanted: number) => `${left} of ${wanted} left`,
  set: 'Set',
  none: 'No number',
  fault: 'A whole number from 1 to 2000, or a time, please.',
  soFar: (good: number) => `${good} good so far, of all people and parts.`,
  howTitle: 'How it is reckoned',
  howRange: (count: number, turns: number) =>
    `200 tries with the last ${parts(count)} of this turn and what was lost in it${turns > 0 ? `, or with losses and changes of turns before (${turns}) of the same order` : ''}. The range is where 8 of 10 tries end. Planned breaks are left out.`,
  paceRatio: (count: number, ratio: number) =>
    `Counted parts, the last ${count}: ${formatNumber(ratio, 2)} times their targets, all time over all targets.`,
  undisturbed: (count: number) =>
    `With nothing lost any more, at their mean time: ${parts(count)} by the end.`,
  state: 'Last 5: over target from a median of 110 % on, until it is down to 105 %.',
  picture:
    'The picture: this turn’s last 20 parts in order, each against its target, which is the dashed line. Hollow: not counted. A triangle: off the picture.',
  scrap: 'A scrapped part takes its time and earns no target.',
  plan: '“With stoppages” also bears stoppages, set-up, rework and called away, whoever caused them.',
  target: (what: string) => `Target: ${what}.`,
  sources: { typed: 'typed in', standard: 'the standard time', takt: 'takt, from calendar and demand' },
});
