/** Words of the Cell screen: what governs, and its frame. */
export const cell = {
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
  tooShort: (title: string) => `${title} is left out: its cycle is shorter than a second.`,
  part: 'Part',
  noCode: 'no code',
  list: (names: readonly string[]) =>
    names.length < 2 ? (names[0] ?? '') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`,
  minutes: (figure: string) => `${figure} min`,
  who: { operator: 'Operator', machine: 'Machine', other: 'Other person' },
  whoNumbered: (who: string, number: number) => `${who} ${number}`,
};

/** Words of the first page: who governs, and what to do next. */
export const cellGoverns = {
  next: {
    outside: (element: string) =>
      `Next: shorten hand work at the standing machine, beginning with “${element}”.`,
    inside: (element: string) =>
      `Next: shorten hand work beside the running machine, beginning with “${element}”.`,
    machine: () => 'Next: make the machine quicker.',
    other: (element: string) => `Next: relieve the other person, beginning with “${element}”.`,
    hands: (element: string) => `Next: shorten hand work, beginning with “${element}”.`,
  },
  paysOnAll: 'It pays on every part.',
  paysOn: (parts: string) => `It pays on ${parts}.`,
  machineOn: (parts: string) => `A faster machine pays on ${parts} only.`,
  machineNowhere: 'A faster machine changes nothing.',
  tieOn: (parts: string) => `On ${parts} hands and machine take turns: only both together make it quicker.`,
  partsTitle: 'Each part in this cell',
  minutesPart: 'min a part',
  partsDay: 'parts a day',
  governs: 'governs',
  off: '1 % less of it: parts a day more',
  outside: 'hands, machine stands',
  inside: 'hands, machine runs',
  machine: 'machine',
  other: 'other person',
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
  },
  tieLoss: (minutes: string) =>
    `Waiting for each other in turn costs ${minutes} a part, which no average shows.`,
  takeover: (pace: string) =>
    `At a pace of ${pace} the machine would take over: nobody can make the cell quicker than that.`,
  chart: 'One cycle: who works, who waits',
  chartSays: (lanes: string) => `Time runs down. ${lanes}`,
  laneSays: (who: string, works: string, waits: string) => `${who} works ${works} and waits ${waits}.`,
  works: 'works',
  waits: 'waits',
  use: 'in use',
  cycle: (minutes: string, parts: number) =>
    `${parts === 1 ? 'Cycle' : `Round of ${parts} parts`} by means: ${minutes}, without occasional work`,
  legend: { working: 'works', attending: 'must watch', waiting: 'waits' },
  effects: 'Shortening one element by 1 %',
  element: 'element',
  more: 'parts a day more',
  none: 'none',
  how: 'How this is reckoned',
  howText: [
    'Each timed cycle is taken as a whole: hands at the standing machine + the longer of hands beside it and the machine; then the mean over all cycles. Times are normal times: observed × rating.',
    'The mean of the longer one is above the longer of the means: that difference is what taking turns costs.',
    'Occasional work counts with its frequency; done beside the machine it counts only where it outlasts it.',
    '1 % off: the same sum again with that element 1 % shorter in every cycle.',
    'Pace at which the machine takes over: 100 × hand time beside it ÷ machine time.',
    'Source: Groover, Work Systems, chapter 13.',
  ],
  day: (hours: string, days: number) =>
    `Parts a day: ${hours} working hours, the mean of the newest ${days} days with turns, without stoppages.`,
  assumedDay: (hours: string) => `Parts a day: ${hours} working hours are assumed until turns are recorded.`,
};
