import { spoken } from '../spoken';
/** Words with which a figure of the Review screen explains itself. */
export const reviewWorking = spoken('reviewWorking', {
  numbers: 'Numbers that went in',
  seconds: 'Net cycles in the order they were done, seconds:',
  count: {
    title: (part: string) => `n of ${part}`,
    says: 'Parts tapped as done on this day, without taps that were taken back and second taps that no part can lie behind.',
    put: (counted: number, n: number) =>
      `${counted} counted of ${n}: the others are in no mean, because a question about them is open or somebody set them aside.`,
  },
  mean: {
    title: (part: string) => `Mean net cycle of ${part}`,
    says: 'Net cycle: from the tap of the part before to the tap of this one, stoppages out; for a part worked in a batch, the time spent on it. Reworked and scrapped parts count; those with an open question, or set aside, do not.',
    none: 'No part counts yet: the questions about them stand under “To be settled”.',
    formula: 'mean = sum of net cycles ÷ n counted',
    put: (sum: string, n: number, mean: string, clock: string) =>
      `${sum} min ÷ ${n} = ${mean} min = ${clock}`,
  },
  deviation: {
    title: (part: string) => `Spread of ${part}`,
    says: 'Sample standard deviation of the net cycles: about how far a single part lies from the mean. It says how alike the parts ran, not how well anyone worked.',
    formula: 's = √( sum of (net cycle − mean)² ÷ (n − 1) )',
    put: (n: number, mean: string, deviation: string) => `n ${n}, mean ${mean} min: s = ${deviation} min`,
  },
  range: {
    title: (part: string) => `Spread of ${part}`,
    says: 'With two to four parts a standard deviation says little, so the shortest and the longest stand here.',
    formula: 'range = shortest to longest net cycle',
    one: 'One part has no spread.',
  },
  target: {
    title: (part: string) => `Target of ${part}`,
    says: 'The time a part should take, as the last part of the day carried it. Shop shows where it comes from.',
    changed: 'It was changed during the day. Every part is compared with the target it carried itself.',
    none: 'No target was set for this part, so it is compared with none.',
  },
  share: {
    title: (part: string) => `Against target, ${part}`,
    all: 'Against target, all parts of the day',
    says: 'Net time of the parts over the time their targets allow. Each part counts with the target it carried. A scrapped part took its time and earns no target. Parts without a target count on neither side. A target that is a standard time holds allowances, so net cycles mostly take less.',
    formula: 'share = sum of net cycles ÷ sum of targets of good parts',
    put: (of: { net: string; target: string; share: string; n: number; scrap: number; against: string }) =>
      `${of.net} min ÷ ${of.target} min = ${of.share} %: ${of.against} (${of.n} ${of.n === 1 ? 'part' : 'parts'} with a target${of.scrap > 0 ? `, ${of.scrap} of them scrap` : ''})`,
  },
  outcome: {
    title: (part: string) => `Good, rework and scrap of ${part}`,
    says: 'As judged on Pace. A part that nobody judged counts as good: good the first time.',
    put: (good: number, rework: number, scrap: number, n: number) => `${good} + ${rework} + ${scrap} = ${n}`,
  },
  elapsed: {
    title: 'Elapsed time',
    says: 'From the first record of each turn to its last, added up. It is not a record of hours worked.',
    formula: 'elapsed = sum of all categories',
  },
  category: {
    formula: 'sum of the stretches of the ledger in this category',
    says: {
      cycle:
        'From tap to tap, stoppages out: the net cycles of the parts, and of the part in hand while a turn is open.',
      'set-up': 'Stopped, with a reason that the shop counts as set-up.',
      stoppage: 'Stopped, with a reason that the shop counts as a stoppage, or with none stated.',
      rework: 'Stopped, with a reason that the shop counts as rework.',
      'planned-break': 'Stopped, with a reason that the shop counts as a planned break.',
      'called-away':
        'Stopped, with a reason that the shop counts as called away. It is in nobody’s pace and in no part’s time.',
      unaccounted: 'Nobody said what it was: mostly the time after the last part of a turn.',
    },
    put: (time: string, elapsed: string, share: string) => `${time} of ${elapsed} elapsed = ${share} %`,
  },
  lost: {
    says: 'From Stop to the tap that went on. The reason is the one given last. Set-up and planned breaks are left out: nobody lost that time.',
    formula: 'time = sum of the stoppages with this reason, in whole seconds',
    put: (count: number, time: string) =>
      `${count} ${count === 1 ? 'stoppage' : 'stoppages'}, ${time} together`,
  },
});
