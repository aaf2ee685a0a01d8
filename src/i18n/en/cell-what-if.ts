import { spoken } from '../spoken';

/** How often something comes: with every part, or once in so many. */
const onceIn = (parts: number) => (parts === 1 ? 'with every part' : `once in ${parts} parts`);

interface Exchange {
  readonly name: string;
  readonly every: number;
  readonly before: number;
}

/** Words of the page that tries changes. */
export const cellWhatIf = spoken('cellWhatIf', {
  title: 'What would change the cell?',
  begin: 'Change something: what it does is said here.',
  reset: 'As it is now',
  work: 'Work',
  lots: 'Lots',
  speed: 'Machine speed',
  fixed: 'Machine minutes speed cannot change',
  passes: 'Passes',
  loading: 'Loading time',
  element: 'One element',
  elementTime: 'Time of that element',
  done: 'Done',
  places: {
    external: 'while the machine stands',
    internal: 'while the machine runs',
    other: 'by another person',
  },
  byOperator: 'by the operator',
  machines: 'Machines',
  buffer: 'Places before the other person',
  arrivalLot: 'Parts that arrive together',
  refillAt: 'Parts left when they arrive',
  trolley: 'Parts that leave together',
  people: 'People',
  of: (what: string, value: string) => `${what}: ${value}`,
  takeBack: (change: string) => `Take back: ${change}`,
  less: (what: string) => `${what}: less`,
  more: (what: string) => `${what}: more`,
  faster: (minutes: string, parts: string) => `${minutes} less a part: ${parts} parts a day more.`,
  slower: (minutes: string, parts: string) => `${minutes} more a part: ${parts} parts a day fewer.`,
  noneShown: {
    faster: (minutes: string, difference: string) =>
      `${minutes} less a part, but no difference in good parts a day that shows: ${difference}.`,
    slower: (minutes: string, difference: string) =>
      `${minutes} more a part, but no difference in good parts a day that shows: ${difference}.`,
  },
  noEffect: {
    hands: 'No effect on the pace, because the hands govern: the machine waits for them already.',
    machine: 'No effect on the pace, because the machine governs: the hands wait for it already.',
    tie: 'No effect on the pace: what is saved is waited for.',
    other: 'No effect on the pace, because the other person governs: the rest of the cell waits already.',
  },
  lotsOnly: 'The pace stays as it is: lots change how long parts wait, not the work.',
  waiting: {
    faster: (parts: string) => `${parts} parts a day more: the two people wait less for each other.`,
    slower: (parts: string) => `${parts} parts a day fewer: the two people wait more for each other.`,
  },
  alone: 'No effect on the pace: the work stays the same.',
  exchange: {
    faster: (parts: string, { name, every, before }: Exchange) =>
      `${parts} parts a day more, because “${name}” comes ${onceIn(every)} instead of ${onceIn(before)}.`,
    slower: (parts: string, { name, every, before }: Exchange) =>
      `${parts} parts a day fewer, because “${name}” comes ${onceIn(every)} instead of ${onceIn(before)}.`,
  },
  tookOver: {
    faster: {
      hands: 'From here on the hands govern: a still faster machine gives nothing.',
      machine: 'From here on the machine governs: still quicker hands beside it give nothing.',
      tie: 'From here on hands and machine take turns: more of either gives less.',
      other: 'From here on the other person governs.',
    },
    slower: {
      hands: 'The hands govern now.',
      machine: 'The machine governs now.',
      tie: 'Hands and machine take turns now.',
      other: 'The other person governs now.',
    },
  },
  leadTime: (now: string, then: string) => `A part is in the cell for ${then} instead of ${now}.`,
  present: 'now',
  proposed: 'then',
  difference: 'difference',
  rows: {
    minutes: 'Minutes a part, working',
    perDay: 'Good parts a day',
    promise: 'kept on 9 days in 10',
    lead: 'Lead time, mean min',
    leadHigh: '9 of 10 parts within, min',
    inside: 'Parts inside',
    people: 'People',
    personHour: 'Good parts a person-hour',
    machine: 'Machine runs, of the day',
  },
  interval: (difference: string, half: string) => `${difference} ± ${half}`,
  notShown: 'none that shows',
  isNotShown: (difference: string) => `${difference}, none that shows`,
  simulated: (days: string, seed: string) =>
    `${days} days simulated from the shop’s own cycles and stoppages, seed ${seed}, the same luck for both.`,
  anotherSeed: 'Other luck',
  longRun: (days: string) => `Simulate ${days} days`,
  progress: (done: string, days: string) => `${done} of ${days} days`,
  stop: 'Stop there',
  daysTitle: 'Good parts a day',
  daysSay: (low: string, median: string, high: string) =>
    `One day in ten has fewer than ${low}, half more than ${median}, one in ten more than ${high}.`,
  median: 'half',
  p10: '1 in 10 below',
  p90: '1 in 10 above',
  chartNow: 'The cycle now',
  chartThen: 'The cycle then',
  how: [
    'Every simulated part takes the times of a cycle that was timed, drawn by chance; where a cycle resembles the one before it, short runs are drawn. Stoppages, scrap and rework come as often and last as long as in the newest turns; a reworked part takes the hands once more the time of a part.',
    'Minutes a part are without stoppages, rework and scrap; everything else in the table has them in.',
    'A stoppage holds the machine where People and machines says so; any other the operator, and the machine ends its cycle.',
    'With the tap comes what ten days of luck tell; all of them follow a moment later.',
    'Occasional work that comes once a trolley comes as often as the trolley goes.',
    'Now and then meet the same luck, so that the difference has a narrow interval: mean difference by days ± t·s/√n, at 95 %. A lead time counts on the day its part is free.',
    'Machine time then = what speed leaves + (the rest) × passes ÷ speed.',
    'The simulation gives the answers of an independent package (SimPy) on twenty random cells, and the exact ones of queueing theory.',
  ],
});
