/** Words of the frame around every screen. */
export const shell = {
  name: 'Pacewright',
  screens: { pace: 'Pace', study: 'Study', review: 'Review', shop: 'Shop', records: 'Records' },
  questions: {
    pace: 'Am I inside this part’s time, ahead or behind?',
    study: 'How long should this take?',
    review: 'How did the day go, fairly?',
    shop: 'What do we make, how, and at what pace?',
    records: 'Is my data safe, and how do I get it out?',
  },
  notices: 'Notices',
  saved: 'Saved',
  recorded: 'Recorded, saving …',
  notSaved: (count: number, isInReserve: boolean, problem: string) =>
    `Not saved: ${count} ${count === 1 ? 'record' : 'records'} ${isInReserve ? 'in reserve' : 'in memory only'}${problem ? ` (${problem})` : ''}`,
  memoryOnly: 'This browser keeps nothing: records are lost when the page closes',
  demo: 'Demo shop: invented records, kept apart from yours',
  leaveDemo: 'Leave the demo',
  readOnly: 'Another tab of Pacewright is recording. This one only reads.',
  takeOver: 'Record here instead',
  takeOverAsk: 'The other tab will finish what it saves and then only read.',
  takeOverYes: 'Yes, record here',
  updateWaits: 'A newer release is ready.',
  updateTake: 'Take it now',
  opening: 'Opening the records …',
  openingSlow: 'The storage of this tablet is slow to answer. Nothing has been deleted.',
  cannotOpen: 'The records could not be read. They have not been deleted.',
  tryAgain: 'Try again',
  rescue: 'Save all records as a file, without the app',
  withoutText:
    'You can go on timing without them. Nothing will be saved, and everything is gone when this page closes.',
  without: 'Go on without saving',
};
