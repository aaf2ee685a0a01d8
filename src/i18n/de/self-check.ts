import type { selfCheckWords as english } from '../en/self-check';
import { formatNumber } from '../format-number';

/** Words of the check of the tablet itself. */
export const selfCheckWords: typeof english = {
  title: 'Dieses Tablet prüfen',
  text: 'Prüft Uhr, Speicher, Bildschirm und jeden Eintrag und ändert keinen.',
  looking: (records) => `Wird geprüft … ${formatNumber(records)} Einträge durchgesehen`,
  failed: (problem) => `Die Prüfung ließ sich nicht beenden (${problem}).`,
  allFine: 'Nichts zu tun.',
  some: (count) =>
    count === 1 ? 'Eine Sache ist zu erledigen.' : `${formatNumber(count)} Sachen sind zu erledigen.`,
  states: { fine: 'In Ordnung', look: 'Zu tun', unknown: 'Unbekannt' },
  names: {
    clock: 'Uhr',
    saving: 'Zeit zum Sichern',
    screen: 'Bildschirm bleibt an',
    installed: 'Installiert',
    offline: 'Ohne Netz',
    copy: 'Sicherung außerhalb',
    records: 'Einträge',
  },
  clock: (ms) => `zeigt die Zeit in Schritten von ${formatNumber(ms, ms < 1 ? 2 : 1)} ms`,
  saving: (half, longest, writes) =>
    `von ${writes} Schreibvorgängen dauerte die Hälfte höchstens ${formatNumber(half, 1)} ms, der langsamste ${formatNumber(longest, 1)} ms. Ein Tippen geht auch ins Journal; das ist nicht gemessen.`,
  notMeasured: 'ließ sich nicht messen',
  screen: {
    kept: 'ja, solange gemessen wird',
    refused: 'das System hat es eben abgelehnt',
    cannot: 'dieser Browser kann es nicht',
  },
  yes: 'ja',
  inTab: 'nein: dies ist ein Browser-Tab',
  offline: 'öffnet sich: die Dateien liegen auf diesem Tablet',
  notOffline: 'die Dateien liegen noch nicht auf diesem Tablet',
  unread: 'nicht lesbar',
  todo: {
    clock:
      'Feiner sind die Zeiten nicht. Einen anderen Browser nehmen oder hier abschalten, was die Uhr rundet.',
    saving:
      'Das Tippen behält seine Zeit, aber „Gesichert“ kommt spät. Andere Apps schließen, Platz schaffen, Tablet neu starten.',
    lasting: 'Die App installieren, dann unter Aufzeichnungen den Browser noch einmal fragen.',
    copies: 'Das private Fenster verlassen oder einen Browser nehmen, der Daten einer Seite behalten darf.',
    screen:
      'In den Einstellungen nach dem Energiesparen sehen oder den Bildschirm beim Laden eingeschaltet lassen.',
    offline: 'Die Seite noch einmal laden, solange ein Netz da ist; nötig ist eine https-Adresse.',
    copy: 'Unter Aufzeichnungen eine Sicherung machen.',
    records: 'Jetzt eine Sicherung machen und den Text unten an die Hilfe geben.',
  },
  handOn: 'Ein Text für die Hilfe',
  holds: 'Darin stehen diese Angaben, die Version und der Browser; kein Eintrag und kein Name.',
  copy: 'Text kopieren',
  copied: 'Kopiert.',
  notCopied: 'Dieser Browser lässt das Kopieren nicht zu: als Datei speichern.',
  share: 'Teilen …',
  download: 'Als Datei speichern',
  offered: (name) => `Zum Herunterladen angeboten: ${name}.`,
  again: 'Noch einmal prüfen',
  back: 'Zu den Aufzeichnungen',
  browser: 'Browser',
  page: 'Bildschirm',
  made: 'Erstellt',
};
