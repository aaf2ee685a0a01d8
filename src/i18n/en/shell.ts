import { spoken } from '../spoken';
/** Words of the frame around every screen. */
export const shell = spoken('shell', {
  name: 'Pacewright',
  screens: { pace: 'Pace', study: 'Study', cell: 'Cell', review: 'Review', shop: 'Shop', records: 'Records' },
  questions: {
    pace: 'Am I inside this part’s time, ahead or behind?',
    study: 'How long should this take?',
    cell: 'What governs the cell, and what would change it?',
    review: 'How did the day go, fairly?',
    shop: 'What do we make, how, and at what pace?',
    records: 'Is my data safe, and how do I get it out?',
  },
  timing: { running: 'running', stopped: 'stopped' },
  notices: 'Notices',
  tablet: 'Tablet',
  saved: 'Saved',
  recorded: 'Recorded, saving …',
  notSaved: (count: number, isInReserve: boolean) =>
    `Not saved: ${count} ${count === 1 ? 'record' : 'records'} ${isInReserve ? 'in reserve' : 'in memory only'}`,
  memoryOnly: 'This browser keeps nothing: records are lost when the page closes',
  missing: 'This part of the app could not be loaded. Nothing has been deleted.',
  rescue: 'Save all records as a file, without the app',
});
