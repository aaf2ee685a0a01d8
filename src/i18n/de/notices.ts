import type { noticeWords as english } from '../en/notices';

/** Words of the strip above every screen: what is not as always. */
export const noticeWords: typeof english = {
  demo: 'Beispielwerkstatt: erfundene Einträge, getrennt von den eigenen',
  leaveDemo: 'Beispiel verlassen',
  readOnly: 'Ein anderer Tab von Pacewright zeichnet auf. Dieser liest nur.',
  takeOver: 'Hier aufzeichnen',
  takeOverAsk: 'Der andere Tab sichert noch zu Ende und liest dann nur.',
  takeOverYes: 'Ja, hier aufzeichnen',
  outdated:
    'Eine neuere Version von Pacewright hat diese Einträge in einem anderen Tab geöffnet. Dieser Tab zeichnet nichts mehr auf.',
  outdatedInReserve:
    'Was er nicht sichern konnte, liegt in Reserve und kommt beim nächsten Start zu den Einträgen.',
  loadAgain: 'Neu laden',
  missing: (count) =>
    count === 1
      ? '1 Eintrag, der auf diesem Tablet war, ist weg.'
      : `${count} Einträge, die auf diesem Tablet waren, sind weg.`,
  restore: 'Zurückspielen …',
  updateWaits: 'Eine neuere Version liegt bereit.',
  updateTake: 'Jetzt wechseln',
  noAnswer: 'der Speicher dieses Tablets antwortet nicht',
  full: 'der Speicher ist voll: unter Aufzeichnungen eine Sicherung nach außen geben',
  notOpen: 'die Einträge sind nicht geöffnet: nach dem Einsatz neu laden',
  ofNewer: 'eine neuere Version hat diese Einträge',
};
