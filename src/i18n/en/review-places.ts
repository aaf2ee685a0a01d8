/** The places of Review, and what is said while its days are read. */
export const reviewPlaces = {
  title: 'What do you want to know?',
  names: {
    day: 'The day',
    weeks: 'The weeks',
    'before-after': 'Before and after',
    promises: 'Promises',
  },
  making: (done: number, of: number) => `Adding up days: ${done} of ${of}`,
  older: (weeks: number) =>
    weeks < 52 ? 'Read a quarter of a year' : `Read ${weeks / 52 === 1 ? 'a year' : `${weeks / 52} years`}`,
};
