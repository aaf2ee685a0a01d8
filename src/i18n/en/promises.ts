import { spoken } from '../spoken';

const days = (count: number) => (count === 1 ? 'one day' : `${count} days`);

/** Words of capacity, people needed, and quotations. */
export const promisesWords = spoken('promisesWords', {
  sentence: (promise: string, kept: string, count: number, reached: number, of: number) =>
    `${promise} good parts a day can be promised for an ordinary mix: going by ${days(count)}, ${kept} bring as many or more. Of all ${days(of)}, hard and easy ones too, ${reached} did`,
  inWords: {
    '0.8': 'eight ordinary days of ten',
    '0.9': 'nine ordinary days of ten',
    '0.95': 'nineteen ordinary days of twenty',
  },
  tooFew: (count: number) =>
    `What a day can bring is told from five ordinary days on; there ${count === 1 ? 'is one' : `are ${count === 0 ? 'none' : count}`} so far`,
  basis: (count: number, of: number, worked: string) =>
    `From ${days(count)} with an ordinary mix, of ${of} read: ${worked} (mean, Student’s t, standard deviation). The mean is kept on every second day only.`,
  keptLabel: 'Kept on',
  keptOn: { '0.8': '8 days of ten', '0.9': '9 days of ten', '0.95': '19 days of twenty' },
  tries: 'Another promise:',
  triesResult: (kept: number, of: number) =>
    `would have been kept on ${kept} of ${of} days, hard and easy ones among them.`,
  people: {
    title: 'People needed',
    quantity: (part: string) => `${part}, parts`,
    hours: 'Hours that each person has for it',
    efficiency: 'Efficiency, %',
    result: (load: string, people: string) => `${load} people before rounding: ${people}.`,
    whole: (count: number) => (count === 1 ? 'one person' : `${count} people`),
    notAbove: 'Hours and efficiency are numbers above 0.',
    targetPace: 'At target pace: the efficiency is not known yet.',
    note: '(Σ parts × target + set-ups) ÷ (hours × efficiency). Filled in: the order above, and one shift by the calendar without its meal.',
  },
  quote: {
    title: 'Quotation',
    part: 'Part',
    quantity: 'Parts',
    setUps: 'Set-ups',
    note: 'For whom, or what',
    freeFrom: 'Free from',
    people: 'People on it',
    until: 'How many by this day?',
    countBy: (day: string, parts: string, part: string, isExpected: boolean) =>
      `By ${day}: ${parts} × ${part} ${isExpected ? 'can be expected' : 'at target pace'}.`,
    countRange: (low: string, high: string) => `${low} if it runs slow, ${high} if it runs well (95 %).`,
    countWorking: (attended: string, efficiency: string | null, setUps: string | null, perPart: string) =>
      `(${attended} attended until then, all people together${efficiency === null ? '' : `, × ${efficiency} % efficiency`}${setUps === null ? '' : ` − ${setUps} for set-ups`}) ÷ ${perPart} s a part, whole parts.`,
    noTimeUntil: 'Nobody works until then by the calendar, or the day is too far off.',
    due: (day: string, people: string) =>
      `Done on ${day} with ${people === '1' ? 'one person' : `${people} people`} on it.`,
    latest: (day: string) => `On ${day} if it runs slow.`,
    calendar: (hours: string) => `${hours} a person and day by the calendar; other orders are not in it.`,
    noCalendar: 'Shop has no shifts: 8 h a person from Monday to Friday; other orders are not in it.',
    todayLeft: (hours: string) => `Today counts with the ${hours} that are left of it.`,
    todayGone: 'Nothing of today is counted.',
    range: (low: string, high: string) => `(${low} to ${high})`,
    dueLine: (day: string, latest: string) =>
      day === latest ? `done on ${day}` : `done on ${day}, if it runs slow on ${latest}`,
    result: (total: string, quantity: string, part: string) => `${quantity} × ${part}: ${total} attended`,
    interval: (low: string, high: string, count: number) =>
      `Between ${low} and ${high} (95 %), from the efficiency of ${days(count)}.`,
    noInterval: (gave: string, count: number) =>
      `At target pace: efficiency and range take five days with targets.${count > 0 ? ` So far ${days(count)} gave ${gave}\u00a0%.` : ''}`,
    standard: (perPart: string, setUp: string | null, source: string) =>
      `${perPart} a part, ${setUp === null ? 'nothing set for a set-up' : `${setUp} a set-up`}. ${source}`,
    sources: {
      typed: 'The time of a part is its target; no standard time was issued for it.',
      standard: 'The time of a part is its standard time.',
      size: 'The time of this size was typed, as standard data gives it.',
    },
    faults: {
      quantity: 'Parts are a whole number from 1 on.',
      setUps: 'Set-ups are a whole number, or 0: none are counted.',
      people: 'People on it are a number above 0: no day is told.',
    },
    anotherSize: 'Another size',
    sizeCode: 'Size',
    sizeTime: 'Standard time for one part, m:ss',
    sizeHalf: 'Give or take, m:ss (may stay empty)',
    sizeNote: 'Standard data on Study gives the time of a size, and how far it may be off.',
    notATime: 'This is not a time: write it as 1:30.',
    revision: (revision: number) => `Method revision ${revision}.`,
    noRevision: 'No method is written for this part.',
    save: 'Write the quotation down',
    given: 'Quotations given',
    none: 'None yet.',
    line: (day: string, quantity: string, part: string, total: string) =>
      `${day}: ${quantity} × ${part}, ${total}`,
    overhauled: 'The standard behind it was changed since: quote again.',
    stands: 'The standard behind it still stands.',
  },
  setUp: {
    title: 'What a set-up earns',
    now: (time: string) => `${time} for each set-up`,
    none: 'Nothing is set: set-ups earn no time, and efficiency counts them as if they were lost.',
    label: 'Standard time of a set-up, m:ss',
    save: 'Set it from now on',
    note: 'What is past keeps the time that stood then.',
  },
  hours: (hours: string) => `${hours}\u00a0h`,
});
