import { spoken } from '../spoken';

const days = (count: number) => (count === 1 ? 'one day' : `${count} days`);

/** Words of the weeks. */
export const reviewWeeks = spoken('reviewWeeks', {
  figure: 'Follow',
  figures: {
    efficiency: 'Efficiency',
    'per-good': 'Time per good part',
    'first-pass': 'First-pass yield',
  },
  part: (code: string) => `Part ${code}`,
  axis: {
    efficiency: 'earned ÷ attended time, %',
    'per-good': 'attended minutes per good part',
    'first-pass': 'good the first time, %',
    part: 'mean net cycle, minutes',
  },
  value: {
    percent: (value: string) => `${value}\u00a0%`,
    decimal: (minutes: string) => `${minutes}\u00a0min`,
  },
  sentence: {
    since: (name: string, day: string) => `${name} since ${day}`,
    before: (sentence: string, first: string, last: string, middle: string) =>
      `${sentence.replace(/\.$/, '')}. Before, ${first} to ${last}: median ${middle}`,
    calm: (name: string, centre: string) => `${name}: ${centre}, and no day stands out`,
    signals: (name: string, centre: string, list: string) => `${name}: ${centre}. Standing out: ${list}`,
    tooFew: (name: string, middle: string, count: number) =>
      `${name}: ${middle}, the median of ${days(count)}. From ten days on, limits say what is chance.`,
    none: 'Nothing to follow yet: no day has this figure.',
  },
  standing: {
    provisional: (count: number) =>
      `Limits from ${days(count)}: provisional. From twenty on they are firm, and stand until a change is noted.`,
    firm: 'Limits from the first twenty days of this stretch. They stand until a change is noted.',
    odd: 'A day that stands out or was a part of a day only is among them, and moves mean and limits.',
  },
  wolf: (alarms: number, count: number) =>
    `From how parts differ within a day, limits would be far too tight: ${alarms} of ${days(count)} with timed parts would look odd, from mix and crew alone.`,
  period: (first: string | null, last: string) => `${first === null ? '' : `${first} to `}${last}. `,
  pictureTitle: (name: string) => `${name}, day by day`,
  picture: (run: { days: number; first: string; last: string; sentence: string }) =>
    `${days(run.days)} from ${run.first} to ${run.last}. ${run.sentence}. The figures stand under the picture.`,
  centre: (value: string) => `mean ${value}`,
  middle: (value: string) => `median ${value}`,
  upper: (value: string) => `limit ${value}`,
  lower: (value: string) => `limit ${value}`,
  target: (value: string) => `target ${value}`,
  method: (revision: number) => `method revision ${revision}`,
  count: 'n',
  legend:
    'One point a day. Level line: mean, or median without limits. Dots: limits of chance (mean ± 2.66 × mean step from day to day). Ringed: stands out.',
  countLegend: { good: ' n: good parts.', done: ' n: parts done.' },
  targetLegend: ' Broken line: target.',
  fewLegend: ' Hollow: fewer than five parts, or a part of a day.',
  changeLegend: ' Upright line: the work was changed, limits begin anew.',
  steps: {
    title: 'Steps from day to day',
    pictureTitle: (name: string) => `${name}: how far each day lies from the one before`,
    says: (mean: string, limit: string) =>
      `Mean step ${mean}; a step beyond ${limit} says that a day was unlike the one before it.`,
    axis: { time: 'step, minutes', percent: 'step, percentage points' },
    centre: (value: string) => `mean ${value}`,
    upper: (value: string) => `limit ${value}`,
    points: (value: string) => `${value} points`,
    note: 'Moving range; its limit is 3.27 × the mean step. The limits above come from the mean step too.',
  },
  sheet: {
    title: (count: number) => `The figures of ${days(count)}`,
    day: 'Day',
    value: 'Value',
    n: 'n',
    said: 'What the chart says, and what was noted',
    partDay: 'a part of a day',
    signals: {
      'beyond-limits': { high: 'above the limit', low: 'below the limit' },
      'eight-on-one-side': { high: 'eighth in a row above the mean', low: 'eighth in a row below the mean' },
    },
  },
  notes: {
    title: 'Notes on days',
    write: 'Write a note on a day',
    none: 'No note on these days.',
  },
  lost: {
    title: 'What cost us most',
    which: 'Over which days?',
    since: (day: string) => `All since ${day}`,
    week: (monday: string) => `The week of ${monday}`,
    sentence: (
      reason: string,
      cost: string,
      share: string,
      of: string,
      since: string,
      until: string | null,
    ) =>
      `${reason}: ${cost} of output ${until === null ? `since ${since}` : `from ${since} to ${until}`}, ${share} % of ${of} in all.`,
    none: 'No time was lost on these days.',
    cost: 'Cost in output',
    recorded: 'Recorded',
    soFar: 'So far',
    note: 'A stoppage costs less than it lasts where machine or operator worked on, as somebody said. What nobody stated stands last.',
  },
  standards: {
    title: 'Targets that look wrong',
    cannotTell:
      'Cannot be told yet: it takes two parts or more with targets, made side by side on five days.',
    none: 'None: no part takes much more or less of its target than the others do.',
    more: (part: string, percent: string, count: number) =>
      `${part} takes ${percent} % more of its target than the other parts do of theirs, in whoever’s hands, on ${days(count)}. Look at the target, not at the people.`,
    less: (part: string, percent: string, count: number) =>
      `${part} takes ${percent} % less of its target than the other parts do of theirs, in whoever’s hands, on ${days(count)}. Look at the target, not at the people.`,
  },
  people: {
    title: 'Figures of single persons',
    note: 'Hidden unless there is a purpose, which is put on record with your code. By each one’s own parts, stoppages out, from five days on. In the order of the codes: nothing here ranks anybody.',
    purpose: 'Purpose',
    by: 'Your code',
    show: 'Put on record and show',
    person: 'Code',
    dayCount: 'Days',
    partCount: 'Parts',
    share: 'Net time ÷ target',
    value: (percent: string, half: string) => `${percent} ± ${half}\u00a0%`,
    tooFew: 'fewer than five days',
    period: (from: string, to: string, isCut: boolean) =>
      `${from} to ${to}${isCut ? ', since the work was changed' : ''}. ±: 95\u00a0% interval of the mean of the days.`,
    hide: 'Hide again',
    shown: (purpose: string) => `Purpose on record: ${purpose}`,
    looks: (count: number) => (count === 1 ? 'Looked at one time' : `Looked at ${count} times`),
    look: (day: string, by: string, purpose: string) => `${day}, ${by}: ${purpose}`,
  },
});
