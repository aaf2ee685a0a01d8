import { spoken } from '../spoken';

/** What each release brought, newest first: what whoever uses it will notice, in a few lines. */
export const changeWords = spoken('changeWords', {
  title: 'What changed',
  updated: 'Pacewright was updated.',
  close: 'Close',
  release: (version: string) => `Release ${version}`,
  releases: [
    {
      version: '0.1.0',
      lines: [
        'The first release.',
        'Pace: one tap a part, ahead or behind, stoppages, a record of one’s own.',
        'Study: watch, rating, summary sheet, standards, studies from paper.',
        'Cell: what governs it, what a change would bring, lead time.',
        'Review: the day, the weeks, before and after, promises.',
        'Records: two copies on the tablet, copies outside, tables, a check of the tablet.',
      ],
    },
  ],
});
