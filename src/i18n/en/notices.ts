import { spoken } from '../spoken';
/** Words of the strip above every screen: what is not as always. */
export const noticeWords = spoken('noticeWords', {
  demo: 'Demo shop: invented records, kept apart from yours',
  leaveDemo: 'Leave the demo',
  readOnly: 'Another tab of Pacewright is recording. This one only reads.',
  takeOver: 'Record here instead',
  takeOverAsk: 'The other tab will finish what it saves and then only read.',
  takeOverYes: 'Yes, record here',
  outdated:
    'A newer release of Pacewright has opened these records in another tab. This tab records no more.',
  outdatedInReserve: 'What it could not save lies in reserve and comes to the records at the next start.',
  loadAgain: 'Load again',
  missing: (count: number) =>
    `${count} ${count === 1 ? 'record that was' : 'records that were'} on this tablet ${count === 1 ? 'is' : 'are'} gone.`,
  restore: 'Restore …',
  updateWaits: 'A newer release is ready.',
  updateTake: 'Take it now',
  noAnswer: 'the storage of this tablet is not answering',
  full: 'the storage is full: take a copy out under Records',
  notOpen: 'the records are not open: load again after the turn',
  ofNewer: 'a newer release has these records',
});
