import { spoken } from '../spoken';
/** The places of Review, and what is said while its days are read. */
export const reviewPlaces = spoken('reviewPlaces', {
  title: 'What do you want to know?',
  names: {
    day: 'The day',
    weeks: 'The weeks',
    'before-after': 'Before and after',
    promises: 'Promises',
  },
  making: (done: number, of: number) => `Adding up days: ${done} of ${of}`,
  readFrom: (day: string) => `Read from ${day} on. There are older days, and they are in no figure here.`,
  older: (weeks: number) =>
    weeks < 52 ? 'Read a quarter of a year' : `Read ${weeks / 52 === 1 ? 'a year' : `${weeks / 52} years`}`,
  paper: {
    demo: 'Demo shop: invented records.',
    printed: (day: string, time: string) => `Printed ${day}, ${time}.`,
    records: (day: string) => `Records up to ${day}.`,
    targets: 'Each part is measured by the target that it carried when it was made.',
    notForPay: 'For planning and improving the work: no payroll record, no measure of a person.',
    remarks: 'Remarks',
    toDo: 'To be done',
    signed: 'Signed',
  },
});
