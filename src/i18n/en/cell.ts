import { spoken } from '../spoken';
/** Words of the Cell screen: what governs, and its frame. */
export const cell = spoken('cell', {
  reading: 'Reading studies, turns and lots …',
  trouble: (problem: string) => `The cell could not be read: ${problem}`,
  tryAgain: 'Try again',
  tabsName: 'The cell',
  tabs: {
    governs: 'What governs',
    'what-if': 'What if',
    'lead-time': 'Lead time',
    people: 'People and machines',
  },
  empty: {
    title: 'The cell is reckoned from a study of the work',
    text: 'Time one part, element by element: what the hands do while the machine stands, what they do while it runs, and the machine itself.',
    go: 'To the studies',
  },
  partial: (title: string, missing: string) => `${title} is left out: no reading is used of ${missing}.`,
  tooFew: (title: string, cycles: number) =>
    `${title} is newer and has ${cycles === 1 ? 'only one whole cycle' : `${cycles} whole cycles`}: an older study with more is used.`,
  tooShort: (title: string) => `${title} is left out: its cycle is shorter than a second.`,
  part: 'Part',
  noCode: 'no code',
  allParts: 'All parts',
  list: (names: readonly string[]) =>
    names.length < 2 ? (names[0] ?? '') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`,
  minutes: (figure: string) => `${figure} min`,
  percent: (figure: string) => `${figure}\u00a0%`,
  who: { operator: 'Operator', machine: 'Machine', other: 'Other person' },
  whoNumbered: (who: string, number: number) => `${who} ${number}`,
});

/** Words that say what a part is reckoned from. */
export const cellSource = spoken('cellSource', {
  study: (title: string) => `From study “${title}”`,
  on: (day: string) => `of ${day}`,
  chosen: {
    newest: (of: number, _enough: number) => `, newest of ${of}`,
    enough: (of: number, enough: number) =>
      `, of ${of} the newest that tells every element in at least ${enough} cycles`,
    most: (of: number, enough: number) => `, of ${of} the one with most whole cycles: none has ${enough}`,
  },
  cycles: (count: number) => `${count} whole ${count === 1 ? 'cycle' : 'cycles'}`,
  precision: (percent: string) => `, cycle ± ${percent} %`,
  flagged: (count: number) =>
    `. ${count === 1 ? 'One of its readings is' : `${count} of its readings are`} worth a look there; what nobody leaves out with a cause counts here as in the standard.`,
  thin: (part: string) => `Too few cycles to lean on what follows for ${part}: time at least five.`,
  mix: (shares: string) =>
    `As made in the newest turns: ${shares}. Beside it only its parts can be tried, one by one.`,
});

/** The element that another measure would begin with, and what both give of it, in good parts a day. */
interface OtherFirst {
  readonly name: string;
  readonly tenth: string;
  readonly second: string;
  readonly firstTenth: string;
}

/** Words of the first page: who governs, and what to do next. */
export const cellGoverns = spoken('cellGoverns', {
  next: {
    outside: (element: string) =>
      `Next: shorten hand work at the standing machine, beginning with “${element}”.`,
    inside: (element: string) =>
      `Next: shorten hand work beside the running machine, beginning with “${element}”.`,
    machine: () => 'Next: make the machine quicker.',
    other: (element: string) => `Next: relieve the other person, beginning with “${element}”.`,
    hands: (element: string) => `Next: shorten hand work, beginning with “${element}”.`,
  },
  tooEarly: 'Too early to say what is next.',
  hasCycles: (part: string, cycles: number) =>
    `${part} has ${cycles} whole timed ${cycles === 1 ? 'cycle' : 'cycles'}.`,
  needed: (cycles: number) => `It takes ${cycles} of a part, with every element read.`,
  pays: {
    outside: 'Hand work at the standing machine pays',
    inside: 'Hand work beside the running machine pays',
    machine: 'A faster machine pays',
    other: 'Relieving the other person pays',
    hands: 'Hand work pays',
  },
  equalMix: 'As many are taken of each part: no turns tell another mix.',
  onEvery: 'on every part',
  onNone: 'nowhere',
  fully: (parts: string) => `on ${parts}`,
  partly: (parts: string) => `less on ${parts}`,
  notOn: (parts: string) => `not on ${parts}`,
  why: {
    most: (first: string, second: string) =>
      `A second less of “${first}” gives ${second} good parts a day more: no element gives more, and of those that give as much it takes longest.`,
    ofItsKind: (first: string, second: string) =>
      `A second less of “${first}” gives ${second} good parts a day more, and of those of its kind that give as much it takes longest.`,
    byTenth: ({ name, tenth, second, firstTenth }: OtherFirst) =>
      `By share “${name}” is ahead: 10 % less of it gives ${tenth} instead of ${firstTenth}; a second less of it gives ${second}. Where the same share can be saved on both, begin there.`,
    byTenthToo: (tenth: string) => `10 % less of it gives ${tenth}, the most as well.`,
  },
  partsTitle: 'Each part in this cell',
  minutesPart: 'min a part, working',
  goodDay: 'good parts a day',
  dayIs: (hours: string) => `${hours} h, no allowances`,
  governs: 'governs',
  second: '1 second less of it: seconds a part gained',
  kinds: {
    outside: 'hands, machine stands',
    inside: 'hands, machine runs',
    machine: 'machine',
    other: 'other person',
  },
  tableNote:
    'Minutes without stoppages. Good parts a day of this part all day, simulated, with stoppages, rework and occasional work.',
  governors: { hands: 'hands', machine: 'machine', tie: 'both in turn', other: 'other person' },
  detail: {
    hands: (code: string, count: number, of: number) =>
      `${code}: the hands govern. In ${count} of ${of} timed cycles the machine waited for them.`,
    machine: (code: string, count: number, of: number) =>
      `${code}: the machine governs. In ${count} of ${of} timed cycles the hands waited for it.`,
    tie: (code: string, count: number, of: number) =>
      `${code}: hands and machine take turns. The machine took longer in ${count} of ${of} timed cycles.`,
    other: (code: string) => `${code}: the other person governs; operator and machine wait.`,
    alone: (code: string) => `${code}: there is no machine, so the hands govern.`,
    mix: (hands: string) => `All parts: the machine waits for the hands in ${hands} % of the cycles.`,
  },
  tieLoss: (minutes: string) =>
    `Waiting for each other in turn costs ${minutes} a part, which no average shows.`,
  takeover: (pace: string) =>
    `Above a pace of ${pace} the machine takes longer than the hands beside it: hands quicker than that only wait there.`,
  chart: 'One cycle: who works, who waits',
  chartSays: (lanes: string) => `Time runs down. ${lanes}`,
  laneSays: (who: string, works: string, waits: string) => `${who} works ${works} and waits ${waits}.`,
  works: 'works',
  loaded: 'is loaded',
  waits: 'waits for others',
  use: 'in use',
  cycle: (minutes: string, parts: number) =>
    `${parts === 1 ? 'Cycle' : `Round of ${parts} parts`} by means: ${minutes}, without occasional work`,
  starts: (element: string) =>
    `The machine starts when the hands have done the last of their work at it: here with the end of “${element}”.`,
  noChart: 'Choose a part above to see its cycle: who works, who waits.',
  legend: { working: 'works', attending: 'must watch', waiting: 'waits' },
  effects: (part: string) => `${part}: what less of an element gives`,
  element: 'element',
  more: 'good parts a day more',
  secondLess: '1 s less',
  tenthLess: '10 % less',
  effectsNote:
    'What gives most for a second stands first; where a second counts alike, what gives more for 10 %. A second of occasional work is saved only when it comes.',
  none: 'none',
  ends: {
    inside: (parts: string) =>
      `Shorter hand work beside the running machine gives up to ${parts} more a day; then the machine governs, and shorter still gives nothing.`,
    machine: (parts: string) =>
      `A faster machine gives up to ${parts} more a day; then the hands govern, and faster still gives nothing.`,
  },
  goodParts: (figure: string) => `${figure} good ${figure === '1' ? 'part' : 'parts'}`,
  how: 'How this is reckoned',
  howText: [
    'Each timed cycle is taken as a whole: hands at the standing machine + the longer of hands beside it and the machine; then the mean over all cycles. Times are normal times: observed × rating.',
    'The mean of the longer one is above the longer of the means: that difference is what taking turns costs.',
    'Occasional work counts with its frequency; done beside the machine it counts only where it outlasts it.',
    '1 second less: the mean cycle again with a second less of that work in every cycle. It is said to pay from 0.75 on, and not to pay below 0.05. It tells who governs: an element that takes long would be first by share even where it is only waited out.',
    '10 % less: the time a part again with that element 10 % shorter in every cycle, on the good parts a day. Good parts for a second: the seconds gained, on the time a part.',
    'Pace at which the machine takes over: 100 × hand time beside it ÷ machine time.',
    'Source: Groover, Work Systems, chapter 13.',
  ],
  day: (hours: string, days: number) =>
    `A day has ${hours} working hours, ${days === 1 ? 'as the newest day with turns' : `the mean of the newest ${days} days with turns`}.`,
  assumedDay: (hours: string) =>
    `A day is taken to have ${hours} working hours and no stoppage until turns are recorded.`,
});
