import type { tabletWords as english } from '../en/tablet';

/** Words of what a tablet keeps for itself: how it looks, and how it answers. */
export const tabletWords: typeof english = {
  title: 'Dieses Tablet',
  close: 'Schließen',
  help: 'Hilfe',
  light: 'Licht',
  themes: { paper: 'Innen', sun: 'Sonne', dim: 'Dunkel' },
  hand: 'Hand zum Tippen',
  hands: { right: 'Rechts', left: 'Links' },
  handNote:
    'Die große Fläche liegt unter dem Daumen dieser Hand, Stopp und die Namen der Ansichten auf der anderen Seite.',
  answer: 'Bei jedem Tippen',
  sound: 'Ton',
  vibration: 'Vibration',
  answerNote: 'Zu sehen ist jedes Tippen ohnehin.',
  keys: 'Tasten und Pedale',
  anyKey: 'Jede Taste tippt',
  taughtKey: 'Nur die angelernte Taste, Enter und Leertaste',
  teach: 'Pedal oder Taste anlernen',
  pressNow: 'Jetzt drücken',
  known: (key) => `jetzt: ${key}`,
  scanner: 'Ein Scanner, der das Kürzel eines Teils und Enter tippt, wählt dieses Teil.',
  language: 'Sprache',
  languageNote:
    'Die Seite lädt neu; Uhren laufen weiter. Was getippt und noch nicht übernommen ist, geht verloren.',
  languageWaits: 'Jetzt nicht: Die Seite lädt neu, und was nicht gesichert ist, ginge verloren.',
  languageMissing: (name: string) =>
    `${name} ist noch nicht auf diesem Tablet. Die Wörter kommen, wenn die App mit Netz startet, und bleiben.`,
  keep: 'Auf Tempo festgelegt',
  keepNow: 'Tablet auf Tempo festlegen',
  keepNoMore: 'Alles wieder freigeben',
  keepHow: 'Gilt sofort: alles andere öffnet sich dann nur mit der PIN der Aufsicht.',
  keepNoPin: 'Dafür ist eine PIN der Aufsicht nötig.',
  kept: 'Auf Tempo festgelegt: alles andere braucht die PIN.',
  keptOpen: 'Offen: alles ist zugänglich, bis Tempo wieder geöffnet wird.',
};
