import type { openingWords as english } from '../en/opening';

/** Words of the page while the records are not open. */
export const openingWords: typeof english = {
  opening: 'Einträge werden geöffnet …',
  heldUp:
    'In einem anderen Tab läuft noch eine ältere Version von Pacewright und misst dort etwas. Dort beenden oder jenen Tab schließen: dieser öffnet sich dann von selbst.',
  notAnswering: 'Der Speicher dieses Tablets antwortet nicht. Nichts wurde gelöscht.',
  cannotOpen: 'Die Einträge konnten nicht gelesen werden. Sie sind nicht gelöscht.',
  newer: 'Eine neuere Version von Pacewright hat diese Einträge geöffnet.',
  newerText:
    'Diese Seite gehört zu einer älteren. Nichts wurde gelöscht. Alle Tabs von Pacewright schließen und es neu öffnen.',
  tryAgain: 'Noch einmal',
  rescue: 'Alle Einträge als Datei sichern, ohne die App',
  goOnText:
    'Auch ohne sie lässt sich weiter messen. Was aufgezeichnet wird, liegt in Reserve und kommt zu den Einträgen, sobald sie sich wieder öffnen.',
  goOn: 'In Reserve weiter',
};
