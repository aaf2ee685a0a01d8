import { spoken } from '../spoken';

const parts = (count: number) => `${count} ${count === 1 ? 'part' : 'parts'}`;
const turns = (count: number) => `${count} ${count === 1 ? 'turn' : 'turns'}`;

/** Words of the Review screen. */
export const review = spoken('review', {
  reading: 'Reading the days …',
  trouble: (problem: string) => `The days could not be read (${problem}). Nothing has been deleted.`,
  tryAgain: 'Try again',

  emptyTitle: 'No turn has been recorded yet',
  emptyText: 'Parts that are tapped on Pace stand here as soon as they are done, each beside its target.',
  openPace: 'Open Pace',
  enterNeedsPart: 'A turn is entered by its parts: write the first part down in Shop.',
  openShop: 'Open Shop',
  openDemo: 'Look at the demo shop',

  day: 'Day',
  dayInList: (day: string, count: number) => `${day}: ${parts(count)}`,
  earlier: '◂ Earlier day',
  later: 'Later day ▸',
  noSuchDay: (day: string) => `Nothing was recorded on ${day}.`,
  newestDay: 'Show the newest day',

  /** The day in words: what it was, then what it was made of. */
  head: {
    forPaper: (day: string) => `${day}. `,
    answer: (efficiency: string, lost: string) => `Efficiency ${efficiency}\u00a0%, with ${lost}.`,
    took: (n: number, done: number, against: string, lost: string) =>
      `${n} of ${parts(done)} took ${against}, with ${lost}.`,
    noTarget: (lost: string) => `No part of this day earned a target; ${lost}.`,
    noParts: (lost: string) => `No part was finished on this day; ${lost}.`,
    noTime: 'The turn began, and nothing was tapped after it.',
    entered: (count: number, efficiency: string | null, lost: string) =>
      `${parts(count)} entered later, ${efficiency === null ? '' : `efficiency ${efficiency}\u00a0%, `}${lost}.`,
    noneCounted: (lost: string) => `No part is in an average yet; ${lost}.`,
    takenAway: 'The turn that was entered on this day was taken away again.',
    lost: (time: string) => `${time} lost`,
    lostUnknown: 'lost time not known',
    unaccounted: (time: string) => `${time} not accounted for`,
    workAlone: (n: number, done: number, against: string) =>
      `Earned ÷ attended time. The work alone (${n} of ${parts(done)}): ${against}.`,
    nothingLost: 'no time lost',
    made: (day: {
      done: number;
      good: number;
      rework: number;
      scrap: number;
      turns: number;
      elapsed: string;
    }) =>
      `${parts(day.done)} in ${turns(day.turns)} of ${day.elapsed}${day.turns > 1 ? ' together' : ''}: ${day.good} good${day.rework > 0 ? ` (${day.good - day.rework} the first time, ${day.rework} with rework)` : ''}, ${day.scrap} scrapped.`,
    mix: {
      harder: (mean: string, usual: string) =>
        `A harder mix than usual: ${mean} of target a part (no set-ups), on other days ${usual}.`,
      easier: (mean: string, usual: string) =>
        `An easier mix than usual: ${mean} of target a part (no set-ups), on other days ${usual}.`,
      usual: (mean: string, usual: string) =>
        `The usual mix: ${mean} of target a part (no set-ups), on other days ${usual}.`,
    },
    mostLost: (reason: string, time: string) => `Most time was lost to: ${reason}, ${time}.`,
    questions: (count: number) =>
      `${count === 1 ? 'One question is' : `${count} questions are`} to be settled ▾`,
    stillOpen: (count: number) =>
      `${count === 1 ? 'One turn is' : `${count} turns are`} still open and counted up to the last tap.`,
  },
  /** One wording wherever a time stands beside its target. */
  against: {
    faster: (percent: string) => `${percent}\u00a0% less time than target`,
    slower: (percent: string) => `${percent}\u00a0% more time than target`,
    level: () => 'the time of the target',
  },
  againstShort: {
    faster: { arrow: '◂', word: 'less time' },
    slower: { arrow: '▸', word: 'more time' },
    level: { arrow: '=', word: 'at the target' },
  },

  pictureTitle: (day: string) => `Net cycle of each part beside its target, ${day}`,
  picture: {
    axis: 'net cycle, minutes a part (stoppages out)',
    legend:
      'Bar to the heavy mark: mean. Thin line: one standard deviation either way. Tall mark with a point: target.',
    fewLegend: ' Fewer than five parts: each is a dot, and the thin line is their range.',
    note: (n: number, counted: number) => (counted < n ? `n ${counted} of ${n}` : `n ${n}`),
    target: (time: string) => `target ${time}`,
    meanTarget: (time: string) => `mean target ${time}`,
    verdict: (arrow: string, percent: string, word: string) => `${arrow} ${percent} % ${word}`,
    noTarget: 'no target',
    scrapLegend: ' A scrapped part took its time and earned no target.',
    meanNote: (clock: string, decimal: string, scrap: number) =>
      scrap > 0 ? `${clock}, ${scrap} scrap` : `${clock} (${decimal} min)`,
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
    share: 'Against target',
    good: 'Good first time',
    rework: 'Reworked',
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
  },

  ledger: {
    category: 'Category',
    time: 'Time',
    share: 'Share',
    attended: (attended: string, elapsed: string, meals: string) =>
      `Attended: ${attended} = ${elapsed} − ${meals} of meal breaks, by the calendar.`,
    untapped: (pieces: string) =>
      `Nobody tapped these as a break, so they stand above as what was going on: ${pieces}.`,
  },

  lost: {
    title: 'Lost time, by reason',
    none: 'No time was lost.',
    unknown: (turns: number) =>
      `Not known: ${turns === 1 ? 'a turn was' : `${turns} turns were`} entered later, and nobody said what was lost.`,
    unknownToo: (turns: number) =>
      `Not in it: what was lost in ${turns === 1 ? 'the turn that was' : `${turns} turns that were`} entered later. Nobody said.`,
    reason: 'Reason',
    time: 'Time',
    count: 'Count',
    all: 'All reasons',
    besides: 'Not lost, and not work on parts either:',
    besidesLine: (name: string, time: string) => `${name} ${time}`,
    note: '“Not stated” stands last and is nobody’s fault.',
  },

  note: {
    write: 'Write a note on this day',
    isChange: 'From this day on the work is another: limits begin anew',
    by: 'Your code',
    text: 'What happened',
    save: 'Keep the note',
    cancel: 'Cancel',
    changed: 'the work was changed',
    before: (day: string, text: string) =>
      `The work was changed on ${day} (${text}): this day is of the work before it.`,
  },

  /** What is taken away or back stays in the records. */
  takeAway: {
    away: 'Take away',
    back: 'Take back',
    keep: 'Leave it',
    note: 'Take this note away?',
    change: 'Take this note away? Then limits no longer begin anew on its day.',
    timing: 'Take this time away?',
    quotation: 'Take this quotation back? It stays in the list, marked.',
    comparisonBack: 'Take this comparison back',
    comparison: 'It stays under “Compared before”, marked.',
    wasBack: (day: string) => `taken back on ${day}`,
  },

  /** What is opened only by those who want it. */
  more: {
    corrections: (count: number) =>
      count === 1 ? 'One thing was put right on this day' : `${count} things were put right on this day`,
    atStation: (count: number, what: string) =>
      `${count === 1 ? 'One question was' : `${count} questions were`} answered at the station: ${what}.`,
    times: (count: number, what: string) => (count === 1 ? what : `${what} (${count} times)`),
  },

  hours: (hours: number, minutes: number | string) =>
    hours > 0 ? `${hours}\u00a0h\u00a0${minutes}\u00a0min` : `${minutes}\u00a0min`,
  close: 'Close',
});
