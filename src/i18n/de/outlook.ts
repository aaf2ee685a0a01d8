import type { outlook as english } from '../en/outlook';
import { formatNumber } from '../format-number';

const parts = (count: number) => `${count} ${count === 1 ? 'Teil' : 'Teile'}`;

/** Words of where a turn is heading, and of the parts that are wanted in it. */
export const outlook: typeof english = {
  finish: (about, from, to) =>
    from === to ? `Fertig um ${about}` : `Fertig gegen ${about}, ${from} bis ${to}`,
  byEnd: (time, from, to) =>
    from === to ? `${parts(from)} bis ${time}` : `${from}–${parts(to)} bis ${time}`,
  byEndOf: (time, from, to, wanted) => `${from === to ? from : `${from}–${to}`} von ${wanted} bis ${time}`,
  allDone: (wanted) => (wanted === 1 ? '1 von 1 fertig' : `Alle ${wanted} fertig`),
  notYet: 'Ende: Prognose ab 5 Teilen',
  ask: 'Wie viele Teile sind nötig?',
  learning: 'Anlernen: das Ende wird nicht berechnet',
  states: { steady: 'Letzte 5: in der Zeit', slower: 'Letzte 5: über Zielzeit' },
  lastParts: (count) => (count === 1 ? 'Das letzte Teil' : `Die letzten ${count} Teile`),

  planTitle: 'Gebrauchte Teile in diesem Einsatz',
  wanted: 'Gute Teile',
  set: 'Setzen',
  none: 'Keine Zahl',
  fault: 'Bitte eine ganze Zahl von 1 bis 2000.',
  soFar: (good) => `Bisher ${parts(good)} gut.`,
  howTitle: 'Wie es berechnet wird',
  howRange: (count, turns) =>
    `200 Versuche mit ${count === 1 ? 'dem letzten Teil' : `den letzten ${count} Teilen`} dieses Einsatzes${turns > 0 ? ` und mit Zeitverlust und Veränderung ${turns === 1 ? 'des Einsatzes' : `der ${turns} Einsätze`} davor` : ''}. Der Bereich ist, wo 8 von 10 Versuchen enden. Geplante Pausen des Kalenders sind ausgenommen.`,
  paceRatio: (ratio) =>
    `Die letzten Teile brauchten das ${formatNumber(ratio, 2)}-Fache ihrer Zielzeiten: all ihre Zeit durch all ihre Zielzeiten.`,
  target: (what) => `Zielzeit: ${what}.`,
  sources: { typed: 'eingegeben', standard: 'die Vorgabezeit', takt: 'der Takt, aus Kalender und Bedarf' },
};
