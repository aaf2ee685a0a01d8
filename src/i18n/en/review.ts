const parts = (count: number) => `${count} ${count === 1 ? 'part' : 'parts'}`;
const turns = (count: number) => `${count} ${count === 1 ? 'turn' : 'turns'}`;

/** Words of the Review screen. */
export const review = {
  reading: 'Reading the days …',
  trouble: (problem: string) => `The days could not be read (${problem}). Nothing has been deleted.`,
  tryAgain: 'Try again',

  emptyTitle: 'No turn has been recorded yet',
  emptyText: 'Parts that are tapped on Pace stand here as soon as they are done, each beside its target.',
  openPace: 'Open Pace',
  openDemo: 'Look at the demo shop',

  day: 'Day',
  dayInList: (day: string, count: number) => `${day}: ${parts(count)}`,
  earlier: '◂ Earlier day',
  later: 'Later day ▸',
  noSuchDay: (day: string) => `Nothing was recorded on ${day}.`,
  newestDay: 'Show the newest day',

  together: {
    inside: (percent: string) => `All parts together: ${percent} % inside the time their targets allow`,
    over: (percent: string) => `All parts together: ${percent} % over the time their targets allow`,
    level: 'All parts together: at the time their targets allow',
    noTarget: 'No part of this day had a target',
    noParts: 'No part was finished on this day',
    forPaper: (day: string) => `${day}. `,
  },
  summary: (day: {
    done: number;
    good: number;
    rework: number;
    scrap: number;
    turns: number;
    elapsed: string;
  }) =>
    `${parts(day.done)} done, ${day.good} good${day.rework > 0 ? ` (${day.rework} of them reworked)` : ''}, ${day.scrap} scrapped, in ${turns(day.turns)} of ${day.elapsed} together.`,
  stillOpen: (count: number) =>
    `${count === 1 ? 'One turn is' : `${count} turns are`} still open and counted up to the last tap.`,
  timeBelow: 'Where the time went stands below.',
  noTime: 'The turn began, and nothing was tapped after it.',

  pictureTitle: (day: string) => `Net cycle of each part beside its target, ${day}`,
  picture: {
    axis: 'net cycle, minutes a part (stoppages out)',
    legend:
      'Bar to the heavy mark: mean. Thin line: one standard deviation either way. Tall mark with a point: target.',
    fewLegend: ' Fewer than five parts: each is a dot, and the thin line is their range.',
    note: (n: number, counted: number) => (counted < n ? `n ${counted} of ${n}` : `n ${n}`),
    target: (time: string) => `target ${time}`,
    meanTarget: (time: string) => `mean target ${time}`,
    inside: (percent: string) => `◂ ${percent} % inside target`,
    over: (percent: string) => `▸ ${percent} % over target`,
    level: '= at the target',
    noTarget: 'no target',
    meanNote: (clock: string, decimal: string) => `${clock} (${decimal} min)`,
    line: (line: { part: string; n: number; mean: string; target: string; verdict: string }) =>
      `${line.part}: ${line.n === 1 ? 'one part' : `${line.n} parts`}, mean ${line.mean}, ${line.target}, ${line.verdict}.`,
  },

  sheet: {
    title: 'Parts of the day',
    hint: 'Touch a figure to see how it was worked out.',
    part: 'Part',
    n: 'n',
    counted: (counted: number) => `${counted}\u00a0counted`,
    mean: 'Mean net cycle',
    spread: 'Spread',
    target: 'Target',
    share: 'Share of target',
    good: 'Good',
    rework: 'Rework',
    scrap: 'Scrap',
    all: 'All parts',
    minutes: (decimal: string) => `${decimal}\u00a0min`,
    /** Held together: a range that is broken over two lines reads as two figures. */
    fromTo: (shortest: string, longest: string) => `${shortest}\u2060–\u2060${longest}`,
    deviation: 'std. dev.',
    range: 'range',
    oneOnly: 'one part only',
    noneCounted: 'none counted',
    changed: 'changed in the day',
    none: '–',
    shareWithSide: (percent: string, side: 'inside' | 'over' | 'level') =>
      `${side === 'inside' ? '◂\u00a0' : side === 'over' ? '▸\u00a0' : ''}${percent}\u00a0%`,
  },

  ledger: {
    title: 'Where the time went',
    pictureTitle: 'Elapsed time by category',
    category: 'Category',
    minutes: 'Minutes',
    share: 'Share',
    elapsed: 'Elapsed',
    piece: (name: string, minutes: string) => `${name} ${minutes} min`,
    names: {
      cycle: 'Work on parts',
      'set-up': 'Set-up',
      stoppage: 'Stoppages',
      rework: 'Rework',
      'planned-break': 'Planned breaks',
      'called-away': 'Called away',
      unaccounted: 'Unaccounted',
    },
  },

  lost: {
    title: 'Lost time, by reason',
    none: 'No time was lost.',
    reason: 'Reason',
    minutes: 'Minutes',
    count: 'Count',
    all: 'All reasons',
    note: 'Set-up and planned breaks are left out. “Not stated” stands last and is nobody’s fault.',
  },

  weeks: {
    title: 'The weeks: daily averages of one part',
    part: 'Part',
    pictureTitle: (part: string) => `Run chart of the daily averages of ${part}`,
    picture: (run: {
      days: number;
      first: string;
      last: string;
      median: string;
      target: string;
      steps: readonly string[];
    }) =>
      `${run.days === 1 ? 'One day' : `${run.days} days`} from ${run.first} to ${run.last}, median ${run.median}${run.target ? `, ${run.target}` : ''}${run.steps.map((step) => `, ${step}`).join('')}. The figures stand in the table below.`,
    step: (revision: number) => `method revision ${revision}`,
    stepOn: (revision: number, day: string) => `method revision ${revision} from ${day} on`,
    axis: 'mean net cycle, minutes',
    count: 'n',
    median: (time: string) => `median ${time}`,
    target: (time: string) => `target ${time}`,
    legend: 'One point a day, in time order. Level line: median. Broken line: target. n: how many parts.',
    fewLegend: ' Hollow point: fewer than five parts.',
    stepLegend: ' Upright line: the method changed; the median is that of the days since.',
    oneDay: 'One day so far: a run begins with the second.',
    older: 'Read four older weeks',
    day: 'Day',
  },

  save: {
    title: 'Out of the tablet',
    thisDay: 'Save the table of this day',
    allDays: (count: number) => `Save the table of all ${count} days`,
    note: 'One row a day and part, as CSV. For improvement and planning; it is no record of hours worked.',
    saved: (name: string) => `Handed over as ${name}.`,
    failed: (problem: string) => `The table was not saved (${problem}).`,
  },

  hours: (hours: number, minutes: number) =>
    hours > 0 ? `${hours}\u00a0h\u00a0${minutes}\u00a0min` : `${minutes}\u00a0min`,
  close: 'Close',
};
