import { spoken } from '../spoken';

const days = (count: number) => (count === 1 ? 'one day' : `${count} days`);

/** Words of before and after. */
export const beforeAfterWords = spoken('beforeAfterWords', {
  titleNone: 'Nothing has been compared yet',
  hint: 'Two periods, one difference that matters: fixed before anybody looks, because a threshold chosen afterwards proves nothing.',
  verdicts: {
    improved: (what: string) => `${what}: improved, by at least the amount that matters`,
    'improved-size-uncertain': (what: string) => `${what}: improved, how much is uncertain`,
    'not-shown': (what: string) => `${what}: a difference is not shown`,
    'no-difference-that-matters': (what: string) => `${what}: no difference that matters`,
    'worse-size-uncertain': (what: string) => `${what}: worse, how much is uncertain`,
    worse: (what: string) => `${what}: worse, by at least the amount that matters`,
  },
  cannot: {
    'too-few-days': 'Each period needs two days or more with counted parts.',
    'no-part-in-both': 'No part was made on two days or more in both periods.',
    'no-spread': 'The days do not differ at all, so nothing tells how sure a difference is.',
  },
  size: (after: string, before: string, percent: string, side: 'less' | 'more') =>
    `Net cycle ${after} a part instead of ${before}: ${percent} % ${side} time.`,
  sure: (difference: string, low: string, high: string) =>
    `The difference is ${difference}, and lies between ${low} and ${high} (95 %, a day is what repeats).`,
  rate: (times: string, low: string, high: string) => `${times} times the rate (${low} to ${high}).`,
  fixedBefore: (percent: string, time: string, when: string, by: string) =>
    `Fixed beforehand: ${percent} % (${time}) matter. Written down on ${when}${by ? ` by ${by}` : ''}.`,
  fixedAfter: (percent: string, time: string, when: string, by: string) =>
    `${percent} % (${time}) are said to matter. Written down on ${when}${by ? ` by ${by}` : ''}, when the later days had been made: whether anybody had seen them by then, the tablet cannot know.`,
  basis: (before: string, beforeDays: number, after: string, afterDays: number) =>
    `Before: ${before} parts on ${days(beforeDays)}. After: ${after} parts on ${days(afterDays)}.`,
  fewDays: 'Fewer than five days on a side: what days do by chance is hardly known.',
  overMix: (codes: string) => `Over one mix of ${codes}, weighted by what was made in both periods.`,
  leftOut: (codes: string) => `Left out, as not made in both: ${codes}.`,
  changeInside: 'The work was noted as changed inside one of the periods: it holds more than one method.',
  picture: {
    title: 'The difference with its interval, beside what matters',
    matters: 'matters',
    same: 'no difference',
    less: '◂ less time',
    more: 'more time ▸',
    axis: 'minutes a part, after − before',
  },
  beside: {
    title: {
      rose: (before: string, after: string) => `Good the first time rose from ${before} to ${after}`,
      fell: (before: string, after: string) =>
        `Good the first time fell from ${before} to ${after}: a faster cell with a lower yield is no improvement`,
      alike: (before: string, after: string) =>
        `Good the first time: ${before} before, ${after} after; that may be chance`,
      unknown: 'Beside the time',
    },
    what: 'Beside the time',
    before: 'Before',
    after: 'After',
    yield: 'Good the first time',
    efficiency: 'Efficiency',
    perGood: 'Attended time per good part',
    leadTime: 'Lead time, arrival to free',
    leadTimeValue: (median: string, p90: string) => `${median} (nine in ten within ${p90})`,
    noLots: 'no lots recorded',
    note: 'Lead time: median working time from the arrival of a lot until its parts are free for the next operation.',
    scrap: 'Scrap',
    percent: (value: string) => `${value} %`,
    between: (value: string, low: string, high: string) => `${value} % (${low} to ${high})`,
    none: '–',
  },
  form: {
    open: 'Compare two periods',
    title: 'What was changed',
    part: 'Part',
    allParts: 'All parts, over one mix',
    beforeFrom: 'Before, from',
    beforeTo: 'to',
    afterFrom: 'After, from',
    afterTo: 'to ',
    threshold: 'Difference that matters, %',
    thresholdHint:
      'The smallest change that would be worth the trouble: say it from the work, not from these figures.',
    by: 'Your code',
    save: 'Fix it, then look',
    order: 'The earlier period ends before the later one begins.',
  },
  others: 'Compared before',
  old: {
    title: 'A time of the old method, from before the tablet',
    says: 'Timed by hand once, it can still be held against what the tablet has recorded.',
    write: 'Write down an old time',
    part: 'Part',
    time: 'Old time for one part, m:ss',
    newTime: 'New time, m:ss, if timed by hand too',
    understood: (time: string) => `= ${time} a part.`,
    understoodBoth: (before: string, after: string, size: string) =>
      `= ${before} before, ${after} now a part: ${size}.`,
    size: (percent: string, side: 'less' | 'more', times: string) =>
      `${percent} % ${side} time, ${times} times the rate`,
    hours: 'That is an hour or more: five minutes are written 5:00.',
    noPart: 'A time belongs to a part, and the shop has none yet.',
    openShop: 'Write down a part in Shop',
    nowByHand: 'Now: timed by hand too.',
    source: 'How it was taken, and by whom',
    noSource: 'common practice, no source',
    by: 'Your code',
    save: 'Write it down',
    notATime: 'This is not a time: write it as 5:00.',
    result: (
      part: string,
      before: string,
      after: string,
      percent: string,
      side: 'less' | 'more',
      times: string,
    ) => `${part}: ${after} now against ${before}: ${percent} % ${side} time, ${times} times the rate.`,
    caution: 'One time without a spread tells how much, and not how sure.',
    now: (count: number) => `Now: mean of ${days(count)}.`,
    takenAs: (source: string) => `Old time: ${source}.`,
    noneMade: (part: string, before: string) =>
      `${part}: ${before} before; no time of today to hold against it, as none was made on the days that were read.`,
  },
});
