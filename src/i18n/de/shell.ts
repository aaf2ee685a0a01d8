import type { shell as english } from '../en/shell';

/** Words of the frame around every screen. */
export const shell: typeof english = {
  name: 'Pacewright',
  screens: {
    pace: 'Tempo',
    study: 'Studie',
    cell: 'Zelle',
    review: 'Rückblick',
    shop: 'Werkstatt',
    // Wider than the bar: it may be parted.
    records: 'Aufzeich\u00adnungen',
  },
  questions: {
    pace: 'Bin ich in der Zeit dieses Teils, voraus oder im Verzug?',
    study: 'Wie lange soll das dauern?',
    cell: 'Was bestimmt die Zelle, und was würde daran etwas ändern?',
    review: 'Wie lief der Tag, fair betrachtet?',
    shop: 'Was fertigen wir, wie und in welchem Tempo?',
    records: 'Sind meine Daten sicher, und wie bekomme ich sie heraus?',
  },
  timing: { running: 'läuft', stopped: 'steht' },
  notices: 'Hinweise',
  tablet: 'Tablet',
  saved: 'Gesichert',
  recorded: 'Aufgezeichnet, wird gesichert …',
  notSaved: (count, isInReserve) =>
    `Nicht gesichert: ${count} ${count === 1 ? 'Eintrag' : 'Einträge'} ${isInReserve ? 'in Reserve' : 'nur im Arbeitsspeicher'}`,
  memoryOnly: 'Dieser Browser behält nichts: Einträge gehen verloren, wenn die Seite geschlossen wird',
  missing: 'Dieser Bereich der App konnte nicht geladen werden. Nichts wurde gelöscht.',
  rescue: 'Alle Einträge als Datei sichern, ohne die App',
};
