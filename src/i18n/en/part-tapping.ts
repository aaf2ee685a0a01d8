import { formatDay } from '../format-day';
import { formatNumber } from '../format-number';
import { roundedClockFace } from '../rounded-clock-face';
import { spoken } from '../spoken';

/** Words of how a part is tapped, and of a target that calendar and demand give. */
export const partTapping = spoken('partTapping', {
  title: 'How it is tapped',
  tappings: { 'each-part': 'Once a part', 'start-stop': 'Start and end', elements: 'Every element' },
  what: {
    'each-part': 'From the end of one part to the end of the next: one tap a part.',
    'start-stop': 'Only the time that hands are on the part. What lies between two parts is in no cycle.',
    elements: 'A tap at the end of every element of the method. The machine’s own elements are not tapped.',
  },
  needsMethod:
    'This part has no method with two elements or more yet, so it is tapped once a part until then.',
  takt: 'Takt',
  demand: 'Parts wanted a day (not kept)',
  take: 'Take it as target',
  working: (net: number, demand: number, taktMs: number, day: string) =>
    `${formatNumber(net)} min on ${formatDay(day)} ÷ ${formatNumber(demand)} = ${roundedClockFace(taktMs)} a part.`,
  rests: (net: number, attended: number) =>
    `All breaks are out of it. Rests are attended time, so a day just on takt has an efficiency of ${formatNumber((100 * net) / attended)} %: ${net} of ${attended} min.`,
  taken: 'The target is takt.',
  faults: {
    'no-calendar': 'For takt the calendar is needed: see “When the shop works” in Shop.',
    'no-shift': 'The calendar has no shift in the next two weeks, so there is no takt.',
    'no-demand': 'A whole number of parts above 0, please.',
    absurd: 'With so many parts there would be less than a second for each, or more than a day.',
  },
});
