import { spoken } from '../spoken';
/** Words of the analysis of studies, of standards, and of standard data. */
export const studyStandard = spoken('studyStandard', {
  title: (part: string) => `Standard of ${part}`,
  back: 'All studies',
  reading: 'Reading the studies …',
  failed: 'The studies could not be read. They have not been deleted.',
  noPart: 'This part is not in the shop.',
  noStudies: 'No finished study of this part yet.',
  studies: 'Analysis of studies',
  obstacles: {
    clock: 'clock check failed',
    trend: 'the work did not stand still',
    unseen: 'an element was never seen',
  },
  otherRevision: (timed: number, used: number) =>
    `it timed revision ${timed} of the method, in use is revision ${used}`,
  beside: (revision: number) => `not in revision ${revision} of the standard`,
  element: 'Element',
  together: 'Together',
  perUnit: (unit: string) => `NT a part, ${unit}, and n`,
  normal: 'Normal time NT',
  standard: 'Standard time ST',
  mixed: 'Two revisions of a method are not taken together: tick the studies of one.',
  chooseOne: 'No study is ticked: why stands beside each. Choose at least one.',
  incomplete: 'Together they have no reading of every element: half a method has no time.',
  allowing: (allowance: string) => `Allowance ${allowance}.`,
  stands: (sampling: string, cycles: number, groups: number) =>
    `± ${sampling} % from ${cycles} cycles of ${groups} ${groups === 1 ? 'operator-day' : 'operator-days'}.`,
  oneDay: 'One operator on one day: this ± says nothing of others and is no measure beside that of several.',
  moreDays: (t: string, needed: number) =>
    `Few operator-days make it wide (t = ${t}); about ${needed} alike reach ± 5 %.`,
  withRating: (total: string) => `With ± 5 % on the time that was rated: ± ${total} %.`,
  proposal: 'Proposal, not issued:',
  issuedAs: (revision: number, day: string) => `Revision ${revision}, in force from ${day}.`,
  from: (day: string) => `from ${day}`,
  blocked:
    'A study whose clock check failed, or whose work did not stand still, makes no standard: leave it out above.',

  working: {
    title: 'How this came about',
    means: 'Elements are matched by name; every reading used counts once.',
    sums: (external: string, internal: string, occasional: string, machine: string) =>
      `NT ext ${external}, NT int ${internal}, NT occ ${occasional}, MC ${machine} min`,
    terms: (pct: string, machinePct: string) => `A ${pct} %, Aₘ ${machinePct} %.`,
    gives: (time: string) => `ST ${time}`,
    interval: (isMany: boolean) =>
      isMany
        ? 'h = t(0.975, g − 1) · √(σ_b² · Σnᵢ² ÷ N² + σ_w² ÷ N), of cycles in operator-days'
        : 'h = t(0.975, n − 1) · s ÷ √n, of whole cycles',
    stands: (cycles: number, groups: number, h: string) =>
      `N = ${cycles} whole ${cycles === 1 ? 'cycle' : 'cycles'}, g = ${groups} ${groups === 1 ? 'operator-day' : 'operator-days'}: h = ± ${h} %.`,
    source:
      'Groover, Work Systems, problem 2.7 and chapter 13; Searle, Casella & McCulloch, Variance Components, chapter 3; ISO/IEC Guide 98-3.',
  },

  issue: (revision: number) => `Issue as revision ${revision}`,
  issued: (revision: number) => `Revision ${revision} says this already.`,
  thin: (cycles: number) =>
    `It rests on ${cycles} whole ${cycles === 1 ? 'cycle' : 'cycles'} and no precision can be said`,
  wide: (pct: string) => `± ${pct} % misses the ± 5 % aimed at`,
  allTheSame: 'issue it all the same',
  inForce: 'In force from',
  checkBy: 'Check study by',
  issuedBy: 'Issued by',
  dayFault: 'Give the day it holds from, a later day for the check, and who issues it.',
  setTarget: 'and make it the part’s target',
  targetPast: 'A newer standard was issued.',
  targetNow: (day: string) => `The target changes now, the standard holds from ${day}.`,
  revisions: 'Standards of this part',
  none: 'No standard was issued yet.',
  number: 'Revision',
  since: 'In force from',
  rests: 'Rests on',
  restsOn: (studies: number, cycles: number, operators: string) =>
    `${studies} ${studies === 1 ? 'study' : 'studies'}, ${cycles} ${cycles === 1 ? 'cycle' : 'cycles'}; ${operators}`,
  isInForce: 'in force',
  dueTitle: 'Due for a check study:',
  due: {
    date: 'its day has come',
    method: 'the method has another revision',
    conditions: 'the conditions are others',
    drift: 'a later study lies more than 5 % from it',
    'one-operator': 'it rests on one operator',
  },
  notDue: 'Nothing asks for a check study.',
  against: (revision: number, pct: string, direction: 'longer' | 'shorter') =>
    `Against revision ${revision}: normal time ${pct} % ${direction}.`,
  cycle: (low: string, high: string, isShown: boolean) =>
    `The mean cycle differs by ${low} to ${high} at 95 % (Welch)${isShown ? '' : ', no change shown'}, without what ratings, occasional work, other people and days add.`,
  otherBasis: (theirs: string) => `Its allowance is ${theirs}: normal times are compared.`,
  list: {
    title: 'Standards',
    check: 'Check study',
    isTarget: 'target already',
    part: 'Part',
    data: 'Standard data: times for other sizes',
    sheet: 'To the standard of this part',
    paper: 'Type in a paper study',
  },
});
