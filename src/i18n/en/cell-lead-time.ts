import { spoken } from '../spoken';
/** Words of the page on lots and lead time. */
export const cellLeadTime = spoken('cellLeadTime', {
  taps: 'Lots at the cell',
  arrived: (parts: string) => `${parts} arrived`,
  released: (parts: string) => `${parts} free for the next operation`,
  parts: (count: number) => `${count} ${count === 1 ? 'part' : 'parts'}`,
  partsArrive: 'Parts in an arriving lot',
  partsLeave: 'Parts in a leaving one',
  otherLots: 'Other lots: sizes, numbers, a scan',
  scan: 'Lot number, typed or scanned, then Enter',
  scanHint: 'A number that is not inside arrives; one that is inside leaves.',
  undo: 'Undo',
  tookArrived: (parts: string) => `Recorded: ${parts} arrived.`,
  tookFree: (parts: string) => `Recorded: ${parts} free.`,
  tookUnseen: (parts: string, unseen: number) =>
    `Recorded: ${parts} free. Nobody saw ${unseen} of them arrive, so those have no lead time.`,
  tookLot: {
    arrived: (lot: string) => `Recorded: ${lot} arrived.`,
    released: (lot: string) => `Recorded: ${lot} is free.`,
  },
  tookBack: 'Taken back.',
  failed: (problem: string) => `Not recorded: ${problem}`,
  nothing: 'Nothing is in the cell by these records.',
  inside: 'In the cell now',
  partsName: 'parts',
  insideOf: (parts: string, count: number) =>
    count === 1 ? `${parts} in one lot` : `${parts} in ${count} lots`,
  lot: 'Lot',
  unnamed: 'without a number',
  came: 'came',
  unseen: (parts: string) => `${parts} left that nobody saw arrive: they have no lead time here.`,
  title: (half: string, high: string) =>
    `Half of the parts were free within ${half}, nine in ten within ${high}.`,
  titleFew: (parts: string, mean: string) => `${parts} so far, ${mean} in the cell on average.`,
  none: 'No lot has left yet: tap when one arrives and when it is free.',
  noTurns:
    'By the clock on the wall: no turn was recorded around these, so nobody knows when the cell worked.',
  overnight: (parts: string, others: string) =>
    `${parts} more were inside while nobody worked, overnight say; they are not among these ${others}.`,
  clocks: { working: 'Working time', wall: 'By the clock' },
  clock: 'All parts, counted in',
  chart: 'Lead times of parts, minutes',
  figures: {
    n: 'parts',
    median: 'half within',
    p80: '8 of 10',
    p90: '9 of 10',
    longest: 'longest',
    mean: 'mean',
  },
  little: (inside: string, by: string) =>
    `Check: ${inside} parts inside on average by counting, ${by} by rate × lead time (Little’s law).`,
  littleOff:
    'They differ by more than 1 %: some lots were not recorded when they came or left, or many are still inside.',
  pce: (share: string, total: string, minutes: string, elements: string) =>
    `Value is added in ${share} of those ${total}: ${minutes}, by ${elements}.`,
  pceWrong: 'Value-adding work takes longer than the lead time, so no share is shown.',
  pceNone: 'Say below which elements add value, and their share of the lead time is shown here.',
  stack: 'Where the lead time of a part goes, by lot sizes',
  stackSays: {
    arrivalLot: (part: string, total: string, share: string) =>
      `${part}: ${total}, and ${share} of it is waiting for the parts of its own lot: smaller lots, not a quicker cell.`,
    flow: (part: string, total: string, share: string) =>
      `${part}: ${total}, and ${share} of it is the work itself: here a quicker cell pays.`,
    trolley: (part: string, total: string, share: string) =>
      `${part}: ${total}, and ${share} of it is waiting for the trolley to fill: smaller trolleys.`,
  },
  terms: { arrivalLot: 'arrival lot', flow: 'flow', trolley: 'trolley' },
  lotTakes: (lot: string, minutes: string) =>
    `A lot of ${lot} takes ${minutes} here, with stoppages and occasional work.`,
  lotTitle: 'By the study’s times alone: in batch, or one piece at a time',
  lotSize: 'Parts of the lot',
  ways: { batch: 'batch, one person', cell: 'one piece, this cell', line: 'one piece, a station an element' },
  lotRows: {
    first: 'first part out, min',
    last: 'last part out, min',
    late: '9 lots of 10 are out by, min',
    inside: 'parts begun, not finished',
    faulty: 'faulty at worst before it is seen',
  },
  settings: 'How the cell is fed, emptied and held up',
  valueAdding: 'These elements add value to the part',
  putDown: 'The part leaves the hands with',
  lastOfAll: 'the last element of the cycle',
  byOther: 'Another person does these (inspection, say)',
  holding: 'For these reasons the machine stands; for any other the operator does',
  set: 'Keep for this cell',
  how: [
    'Lead time: from arrival at the cell until the part is free for the next operation. A finished part that waits for the trolley is still in the cell.',
    'Working time is when turns ran, without their planned breaks.',
    'Without a number, what came first leaves first.',
    'By the clock, a part that was inside while nobody worked for more than four hours is told apart. Below ten parts there are no shares.',
    'The bar is the mean lead time of the simulation on the other pages, split where a part is begun and put down. By formula it is c·(r + (Q − 1)/2) + F + c·(q − 1)/2, with c the interval between parts, Q the arrival lot, r what is left when it arrives, q the trolley, F the part’s own way.',
    'A lot takes the way of its first part and an interval for each of the others, as simulated.',
    'Little’s law: parts inside = rate × lead time, exact over any time that begins and ends empty.',
    'Value-adding share: work on this part only, never what is done beside it, so it cannot pass 100 %.',
    'Lot: in batch Q·Σt; one piece Σt + (Q − 1)·cycle; with a station each Σt + (Q − 1)·longest. A wrong setting is seen when a part is finished.',
  ],
});
