import type { recordsWords as english } from '../en/records';

const records = (count: number) => `${count} ${count === 1 ? 'Eintrag' : 'Einträge'}`;

/** Words of the Records screen. */
export const recordsWords: typeof english = {
  reading: 'Einträge werden gezählt …',
  trouble: (problem) => `Die Einträge konnten nicht gezählt werden (${problem}). Nichts wurde gelöscht.`,
  kept: {
    title: 'Was auf diesem Tablet liegt',
    /** Stands after the figure itself. */
    saved: (count) => `${count === 1 ? 'Eintrag' : 'Einträge'} gesichert`,
    rows: {
      holds: 'Enthält',
      days: 'Von, bis',
      tablet: 'Name dieses Tablets',
      copies: 'Kopien auf diesem Tablet',
      lasting: 'Zusage des Browsers',
      room: 'Freier Platz',
      unsaved: 'Nicht gesichert',
    },
    holds: (turns, studies) =>
      `${turns} ${turns === 1 ? 'Einsatz' : 'Einsätze'}, ${studies} ${studies === 1 ? 'Studie' : 'Studien'}`,
    days: (first, last) => (first === last ? first : `${first} bis ${last}`),
    noDays: 'noch kein Einsatz und keine Studie',
    copies: {
      2: 'zwei: eine Datenbank und daneben ein Journal',
      1: 'eine: eine Datenbank',
      0: 'keine: alles ist verloren, wenn die Seite geschlossen wird',
    },
    lasting: {
      asking: 'wird gefragt …',
      yes: 'gegeben: er behält die Einträge, bis jemand sie löscht',
      no: 'nicht gegeben: wird der Platz auf dem Tablet knapp, darf er die Einträge löschen',
      forgetful:
        'nicht gegeben: in einem Browser-Tab löscht er sie nach sieben Tagen ohne Nutzung. Die App auf den Home-Bildschirm legen (Teilen, dann Zum Home-Bildschirm) und die Einträge als Sicherung mitnehmen',
      unknown: 'dieser Browser sagt es nicht',
    },
    ask: 'Browser noch einmal fragen',
    noRoom: 'der Browser sagt es nicht',
    littleRoom: (size) => `${size}, das ist wenig: eine Sicherung machen, dann auf dem Tablet Platz schaffen`,
    askedInVain:
      'Der Browser sagte wieder nein. Oft sagt er ja, sobald die App auf dem Home-Bildschirm installiert ist oder eine Weile genutzt wurde.',
    unsaved: (count) => `${records(count)}, nur im Arbeitsspeicher`,
  },
  take: {
    title: 'Messwerttabelle einlesen',
    text: 'Eine Zeile je Messwert, als CSV, mindestens mit den Spalten study, cycle, element und observed_s oder watch_s. Übernommen wird alles oder nichts.',
    choose: 'Tabelle wählen …',
    reading: 'Tabelle wird gelesen …',
    refused: (name, count) =>
      `Aus ${name} wurde nichts übernommen: ${count === 1 ? 'ein Fehler spricht dagegen' : `${count} Fehler sprechen dagegen`}.`,
    more: (count) => `und ${count} weitere`,
    tooLarge: (name, megabytes) =>
      `Nichts wurde übernommen: ${name} ist größer als ${megabytes} MB, und so groß ist keine Messwerttabelle.`,
    unreadable: (name, problem) =>
      `Nichts wurde übernommen: ${name} konnte nicht gelesen werden (${problem}).`,
  },
  give: {
    title: 'Tabellen ausgeben',
    profile: 'Zahlen in Tabellen',
    profiles: {
      point: { name: '1.25', note: 'Dezimalpunkt, Kommas zwischen den Feldern' },
      comma: { name: '1,25', note: 'Dezimalkomma, Semikolons zwischen den Feldern' },
    },
    study: 'Messwerte einer Studie',
    studyText: 'Jeder Messwert: genug, um die Studie überall neu zu berechnen.',
    noStudy: 'Noch keine Studie.',
    saveStudy: 'Messwerttabelle speichern',
    days: 'Tage',
    daysText: 'Eine Zeile je Tag und Teil: n, Mittelwert, Streuung, Zielzeit.',
    saveDays: 'Tagestabelle speichern',
    saved: (name) => `Zum Herunterladen angeboten: ${name}.`,
    guarded: (count) =>
      count === 1
        ? ' Ein Text beginnt wie eine Formel; er steht dort mit einem Apostroph davor, damit keine Tabellenkalkulation ihn ausführt.'
        : ` ${count} Texte beginnen wie eine Formel; sie stehen dort mit einem Apostroph davor, damit keine Tabellenkalkulation sie ausführt.`,
    noDays: 'Noch gibt es keinen Tag zu speichern.',
    noReadings: 'Diese Studie hat keinen Messwert zu speichern.',
    failed: (problem) => `Es entstand keine Tabelle (${problem}).`,
  },
  demo: {
    title: 'Die Beispielwerkstatt',
    text: 'Eine erfundene Werkstatt über vier Wochen, um alles auszuprobieren. Deren Einträge liegen getrennt von den eigenen und vermischen sich nie mit ihnen.',
    open: 'Beispielwerkstatt öffnen',
    leave: 'Beispielwerkstatt verlassen',
  },
  purpose: {
    title: 'Wofür diese Aufzeichnungen da sind',
    text: 'Um die Arbeit zu verbessern und zu planen; nicht für Lohn oder Disziplinarmaßnahmen. Dies ist keine Arbeitszeiterfassung und keine Lohnabrechnung. Nichts verlässt das Tablet, außer jemand gibt es hier aus.',
  },
};
