import type { ownRecord as english } from '../en/own-record';
import { formatNumber } from '../format-number';

/** Words of the operator's own record, read when a turn has ended. */
export const ownRecord: typeof english = {
  ownTitle: 'Die eigene Aufzeichnung',
  ownWhen: (person, day, from, to) => `${person} · ${day}, ${from} bis ${to}`,
  ownNote:
    'Wer gearbeitet hat, sieht sie zuerst. Sie ist zum Verbessern und Planen da, nicht für Lohn oder Strafen.',
  startAnother: 'Neuer Einsatz',
  whose: 'Wessen Aufzeichnung?',
  shared: (count) =>
    `${count === 1 ? 'Ein Teil wurde' : `${count} Teile wurden`} zu zweit gefertigt und ${count === 1 ? 'steht' : 'stehen'} in keinen eigenen Zahlen.`,
  byPart: 'Teile',
  noParts: 'In diesem Einsatz wurde kein Teil fertig.',
  column: {
    part: 'Teil',
    n: 'Fertig',
    mean: 'Mittelwert',
    target: 'Zielzeit',
    good: 'Gut beim ersten Mal',
    rework: 'Nacharbeit',
    scrap: 'Ausschuss',
    what: 'Zeit',
    duration: 'min:s',
    share: 'Anteil',
    when: 'Um',
    why: 'Warum',
    element: 'Abschnitt',
  },
  targetChanged: 'letzte von mehreren',
  netNote: 'Mittelwerte ohne Stillstände.',
  leftOut: (reasons) => `Darin nicht enthalten: ${reasons}.`,
  leftOutFor: {
    asked: 'mit offener Frage',
    'no-time-left': 'nur Stillstände oder Lücken',
    interrupted: 'mit Stillstand darin',
    'first-off': 'Erstteil',
    'set-aside': 'beiseitegelegt',
    learning: 'beim Anlernen',
  },
  reworkOf: (marked, waiting) =>
    `Zur Nacharbeit vermerkt: ${marked}. Nachgearbeitet, wie getippt: ${marked - waiting}. Wartet noch: ${waiting}.`,
  countedOf: (counted) => `(${counted} gewertet)`,
  share: (part) => `${formatNumber(part * 100)} %`,
  stoppagesTitle: 'Stillstände',
  noStoppages: 'Die Arbeit stand nie still.',
  noteTitle: 'Etwas zu diesem Einsatz zu sagen?',
  noteHint: 'Wer den Tag ansieht, liest es neben den Zahlen.',
  noteKept: 'Bei der eigenen Aufzeichnung gesichert.',
  noteKeep: 'Behalten',
  putRight: 'berichtigt',
  sayWhyShort: 'Grund nennen',
  change: 'Ändern',
  elementsTitle: 'Abschnitte',
  daysTitle: 'Zum Mitnehmen',
  takeDays: (person) => `Die letzten 90 Tage von ${person} als Datei`,
  daysNote:
    'Jedes Teil mit Zeit und damaliger Zielzeit. Niemand erfährt davon.',
  taken: (name, count) => `Gesichert: ${name}, ${count} ${count === 1 ? 'Teil' : 'Teile'}.`,
  notTaken: (error) => `Nichts wurde gesichert: ${error}`,
};
