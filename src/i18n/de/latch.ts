import type { latchWords as english } from '../en/latch';
import { clockFace } from '../format-duration';

/** Words of the supervisor's PIN. */
export const latchWords: typeof english = {
  title: 'PIN der Aufsicht',
  what: 'Im Vorbeigehen kann niemand Teile, Zielzeiten, Verfahren, Zuschläge und Gründe ändern oder hier eine Sicherung zurückspielen. Ein Tresor ist sie nicht: sie verbirgt und verschließt nichts, und wer das Tablet eine Stunde lang hat oder eine Sicherung der Einträge, kommt an ihr vorbei.',
  off: 'Keine PIN gesetzt.',
  on: 'Eine PIN ist gesetzt. Messen geht ohne sie, auch ein neues Kürzel und auf Tempo ein neues Teil ohne Zielzeit; Vorgaben zu ändern nicht.',
  open: 'Offen für Änderungen, bis Tempo geöffnet wird.',
  shut: 'Gesperrt: hier ändern geht nur mit der PIN der Aufsicht.',
  pin: 'PIN',
  give: 'Entsperren',
  close: 'Wieder sperren',
  newPin: 'Neue PIN, 4 bis 12 Ziffern',
  again: 'Noch einmal dieselbe',
  current: 'Die gesetzte PIN',
  set: 'PIN setzen',
  change: 'PIN ändern oder entfernen',
  changeTo: 'PIN ändern',
  remove: 'PIN entfernen',
  cancel: 'Abbrechen',
  wasSet: 'Die PIN ist gesetzt.',
  wasRemoved: 'Die PIN ist entfernt.',
  shape: 'Eine PIN hat vier bis zwölf Ziffern.',
  differs: 'Die beiden PINs sind verschieden.',
  checking: 'Wird geprüft …',
  wrong: 'Das ist nicht die PIN.',
  wait: (ms) => `Zu viele falsche. Die nächste in ${clockFace(ms)}.`,
  noCryptography: 'Hier hat der Browser keine Kryptografie; unter einer https-Adresse öffnen.',
  forgotten:
    'Eine vergessene PIN ist verloren, und was sie sperrt, bleibt gesperrt, auch auf Tablets, die eine Sicherung übernehmen; Messen und Rückblick gehen weiter. Also bei den Schlüsseln der Aufsicht aufschreiben.',
};
