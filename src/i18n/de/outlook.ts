import type { outlook as english } from '../en/outlook';
import { formatNumber } from '../format-number';

const parts = (count: number) => `${count} ${count === 1 ? 'Teil' : 'Teile'}`;

/** Words of where a turn is heading, and of the parts that are wanted in it. */
export const outlook: typeof english = {
  finish: (about, from, to) => (from === to ? `Fertig um ${about}` : `Fertig gegen ${about} (${from}–${to})`),
  byEnd: (time, about, from, to) =>
    from === to ? `${parts(about)} bis ${time}` : `Etwa ${parts(about)} bis ${time} (${from}–${to})`,
  byEndOf: (time, about, from, to, wanted) =>
    from === to
      ? `${about} von ${wanted} bis ${time}`
      : `Etwa ${about} von ${wanted} bis ${time} (${from}–${to})`,
  allDone: (wanted) => (wanted === 1 ? '1 von 1 fertig' : `Alle ${wanted} fertig`),
  atTarget: (time) => `Nach Ziel fertig: ${time}`,
  notYet: 'Noch zu früh: Prognose ab 10 gewerteten Teilen',
  ask: 'Wie viele Teile?',
  learning: 'Anlernen: das Ende wird nicht berechnet',
  states: { steady: 'Letzte 5: bis 10 % darüber', slower: 'Letzte 5: über Zielzeit' },
  positionLater: 'Voraus oder im Verzug: ab dem ersten Teil',
  lastParts: (count) => (count === 1 ? 'Das letzte Teil' : `Die letzten ${count} Teile`),

  planTitle: 'Gewünschte Teile und Schichtende',
  wanted: 'Gute Teile',
  until: 'Schicht endet um',
  left: (left, wanted) => `Noch ${left} von ${wanted}`,
  set: 'Übernehmen',
  none: 'Keine Zahl',
  fault: 'Bitte eine ganze Zahl von 1 bis 2000 oder eine Uhrzeit.',
  soFar: (good) => `Bisher ${good} gut, von allen Personen und Teilen.`,
  howTitle: 'Wie es berechnet wird',
  howRange: (count, turns) =>
    `200 Versuche mit den letzten gewerteten Teilen (${count}) dieses Einsatzes und seinem Zeitverlust${turns > 0 ? ` oder mit Zeitverlust und Verlauf früherer Einsätze (${turns}) mit ähnlich langen Teilen` : ''}. Der Bereich ist, wo 8 von 10 Versuchen enden. Geplante Pausen sind ausgenommen.`,
  paceRatio: (count, ratio) =>
    `Gewertete Teile, die letzten ${count}: das ${formatNumber(ratio, 2)}-Fache ihrer Zielzeiten, alle Zeit durch alle Zielzeiten.`,
  undisturbed: (count) =>
    `Ohne weiteren Zeitverlust, in ihrer mittleren Zeit: ${count} ${count === 1 ? 'Teil' : 'Teile'} bis zum Schluss.`,
  state: 'Letzte 5: über Zielzeit ab einem Median von 110 %, bis er auf 105 % sinkt.',
  picture:
    'Das Bild: die letzten 20 Teile der Reihe nach, jedes gegen seine Zielzeit, die gestrichelte Linie. Hohl: nicht gezählt. Dreieck: außerhalb des Bildes.',
  scrap: 'Ein Ausschussteil kostet seine Zeit und bringt keine Zielzeit ein.',
  plan: '„Mit Stillständen“ trägt auch Stillstände, Rüsten, Nacharbeit und Weggerufen, gleich durch wen.',
  target: (what) => `Zielzeit: ${what}.`,
  sources: { typed: 'eingegeben', standard: 'die Vorgabezeit', takt: 'der Takt, aus Kalender und Bedarf' },
};
