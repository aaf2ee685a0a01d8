import { spoken } from '../spoken';
/** Words of what is checked before a study is used: the clock, whether the work stood still, how often things come. */
export const studyReduce = spoken('studyReduce', {
  clock: {
    title: 'Clock check',
    elapsed: 'Elapsed, by the clock',
    before: 'Before the first tap',
    after: 'After the last break point',
    effective: 'Elements',
    ineffective: 'Foreign, and waiting for the machine',
    unaccounted: 'Unaccounted',
    unaccountedIs: (time: string, pct: string) => `${time}, ${pct} %`,
    good: 'At most 2 % is unaccounted: the clock agrees.',
    bad: (pct: string) => `Not usable: ${pct} % of the time is unaccounted. Above 2 % the study is repeated.`,
    none: 'No clock check: the study was not timed here, or is still timed.',
    formula:
      'Unaccounted = elapsed − (before + after + elements + foreign and waiting). Niebel & Freivalds; limit 2 %.',
    byTablet: 'Compared with the tablet’s own clock.',
    byShop: 'Read off the shop’s clock.',
    type: 'Read it off the shop’s clock',
    started: 'Came, h:mm or h:mm:ss',
    finished: 'Left',
    beforeMin: 'Before the first tap, min',
    afterMin: 'After the last, min',
    fault: 'Give both clock times as 7:05 or 7:05:30, and the minutes as numbers.',
    keep: 'Keep it',
    leave: 'Leave it',
  },
  oneLane: {
    whole: (runs: string) =>
      `Timed one after the other: ${runs} has the work done meanwhile inside. Where the machine stopped before it was done, its time here is too long.`,
    behind: (work: string) =>
      `The method has ${work} done while the machine runs, but it was timed after the stop, so it counts as done while the machine stands. Time operator and machine at once.`,
  },
  steady: {
    title: 'Did the pace stay the same?',
    few: (n: number) =>
      `Hand work of ${n} whole ${n === 1 ? 'cycle' : 'cycles'}: from five on it can be said.`,
    trendFew: (n: number) => `Hand work of ${n} whole cycles: whether it changes shows from ten on.`,
    none: (n: number) => `No trend in the hand work of ${n} whole cycles.`,
    falling: (pct: string) =>
      `The cycles became ${pct} % shorter: somebody was learning. The study describes a moment; no standard is made from it.`,
    rising: (pct: string) =>
      `The cycles became ${pct} % longer: fatigue, or a tool that dulls. Find what comes back from time to time and give it a frequency; no standard is made from this.`,
    order: 'Short and long cycles come in stretches rather than by chance.',
    run: 'Eight or more in a row lie on one side of the mean.',
    beyond: (cycles: string) => `Beyond the natural limits: cycle ${cycles}.`,
    closer: (from: string, to: string) =>
      `Rating took the spread of the hand work from ${from} % to ${to} %.`,
    wider: (from: string, to: string) =>
      `Rated, the hand work spreads more than observed: ${from} % to ${to} %. Ratings that follow the pace narrow it.`,
    chart: 'Rated work by hand of each whole cycle, in their order',
    source: 'Slope and halves on logarithms, median runs test, natural limits: NIST/SEMATECH e-Handbook.',
  },
  frequency: {
    sources: {
      method: 'as the method says',
      record: 'from a production record',
      observed: 'as seen in this study',
    },
    source: 'How that is known',
    seen: (count: number, units: number) =>
      `Seen ${count === 1 ? 'once' : `${count} times`} in ${units} work units`,
    between: (low: string, high: string) =>
      `. By chance alone that could be anything from 1 in ${low} to 1 in ${high}.`,
    never: '. That says nothing about how often it comes.',
    few: 'Fewer than five were seen: ask the method or a production record.',
    observe: (units: string) => `Take what was seen: once in ${units}`,
    record: 'A production record says once in every',
    keep: 'Keep it',
    interval: 'Interval: Garwood 1936.',
  },
  combination: {
    title: 'Standardized work combination table',
    heads: ['No.', 'Step', 'Manual', 'Auto', 'Walk'] as readonly [string, string, string, string, string],
    together: 'Together',
    cycle: (time: string) => `cycle ${time}`,
    target: (time: string) => `target ${time}`,
    sum: (cycle: string, waiting: string) =>
      `One cycle takes ${cycle} of normal time; the operator waits ${waiting} of it. Allowances and occasional work come on top.`,
    starts: (machine: string, element: string) => `${machine} starts as “${element}” ends.`,
    key: 'Solid: manual. Dashed: the machine runs. Wavy: walking. Arrow at both ends: waiting.',
  },
  paper: {
    printed: (when: string) => `Printed ${when} from the records up to then.`,
    formulas: 'Formulas: NT = mean of OT · R ÷ 100; ± = t · s ÷ √n; ',
    signs: ['Analyst', 'Supervisor', 'Seen by the operator or whoever speaks for them'],
    print: 'Print',
  },
});
