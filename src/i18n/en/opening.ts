import { spoken } from '../spoken';
/** Words of the page while the records are not open. */
export const openingWords = spoken('openingWords', {
  opening: 'Opening the records …',
  heldUp:
    'Another tab still runs an older release of Pacewright and times something there. Finish it, or close that tab: this one opens by itself then.',
  notAnswering: 'The storage of this tablet is not answering. Nothing has been deleted.',
  cannotOpen: 'The records could not be read. They have not been deleted.',
  newer: 'A newer release of Pacewright has opened these records.',
  newerText:
    'This page is of an older one. Nothing has been deleted. Close every tab of Pacewright and open it again.',
  tryAgain: 'Try again',
  rescue: 'Save all records as a file, without the app',
  goOnText:
    'You can go on timing without them. What you record lies in reserve, and comes to the records when they open again.',
  goOn: 'Go on in reserve',
});
