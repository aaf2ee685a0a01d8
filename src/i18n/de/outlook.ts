import type { outlook as english } from '../en/outlook';
import { formatNumber } from '../format-number';

const parts = (count: number) => `${count} ${count === 1 ? 'Teil' : 'Teile'}`;

/** Words of where a turn is heading, and of the parts that are wanted in it. */
export const outlook: typeof english = {
  finish: (about, from, to) =>
    from === to ? `Fertig um ${about}` : `Fertig gegen ${about}, ${from} bis ${to}`,
  byEnd: (time, about, from, to) =>
    from === to ? `${parts(about)} bis ${time}` : `Etwa ${parts(about)} bis ${time}, ${from} bis ${to}`,
  byEndOf: (time, about, from, to, wanted) =>
    from === to
      ? `${about} von ${wanted} bis ${time}`
      : `Etwa ${about} von ${wanted} bis ${time}, ${from} bis ${to}`,
  allDone: (wanted) => (wanted === 1 ? '1 von 1 fertig' : `Alle ${wanted} fertig`),
  notYet: 'Noch zu früh: Prognose ab 10 gewerteten Teilen',
  ask: 'Wie viele Teile sind nötig?',
  learning: 'Anlernen: das Ende wird nicht berechnet',
  states: { steady: 'Meist in der Zeit (letzte 5)', slower: 'Meist über Zielzeit (letzte 5)' },
  positionLater: 'Voraus oder im Verzug: ab dem ersten Teil',
  lastParts: (count) => (count === 1 ? 'Das letzte Teil' : `Die letzten ${count} Teile`),

  planTitle: 'Gewünschte Teile und Schichtende',
  wanted: 'Gute Teile',
  until: 'Schicht endet um',
  askShort: 'Wie viele Teile?',
  wantedCount: (wanted) => `${wanted} gewünscht`,
  set: 'Setzen',
  none: 'Keine Zahl',
  fault: 'Bitte eine ganze Zahl von 1 bis 2000 oder eine Uhrzeit.',
  soFar: (good) => `Bisher ${parts(good)} gut.`,
  howTitle: 'Wie es berechnet wird',
  howRange: (count, turns) =>
    `200 Versuche mit ${count === 1 ? 'dem letzten Teil' : `den letzten ${count} Teilen`} dieses Einsatzes und dem, was dabei verloren ging${turns > 0 ? ` oder mit Zeitverlust und Veränderung ${turns === 1 ? 'eines früheren Einsatzes' : `von ${turns} früheren Einsätzen`} gleicher Größenordnung` : ''}. Der Bereich ist, wo 8 von 10 Versuchen enden. Geplante Pausen des Kalenders sind ausgenommen.`,
  paceRatio: (count, ratio) =>
    count === 1
      ? `Das letzte gewertete Teil brauchte das ${formatNumber(ratio, 2)}-Fache seiner Zielzeit.`
      : `Die letzten ${parts(count)}, die gewertet sind, brauchten das ${formatNumber(ratio, 2)}-Fache ihrer Zielzeiten: all ihre Zeit durch all ihre Zielzeiten.`,
  undisturbed: (count) =>
    `Ohne weiteren Zeitverlust, in ihrer mittleren Zeit: ${count} ${count === 1 ? 'Teil' : 'Teile'} bis zum Schluss.`,
  scrap: 'Ein Ausschussteil kostet seine Zeit und bringt keine Zielzeit ein.',
  plan: '„Mit Stillständen“ enthält auch Stillstände, Rüsten, Nacharbeit und Zeit, in der jemand weggerufen war: was der Plan tragen muss, gleich durch wen.',
  target: (what) => `Zielzeit: ${what}.`,
  sources: { typed: 'eingegeben', standard: 'die Vorgabezeit', takt: 'der Takt, aus Kalender und Bedarf' },
};
