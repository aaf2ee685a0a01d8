import type { pace as english } from '../en/pace';
import { clockFace } from '../format-duration';
import { formatNumber } from '../format-number';
import { roundedClockFace } from '../rounded-clock-face';

/** Words of the operator's screen. */
export const pace: typeof english = {
  turnHeading: (person, part) => `${person} · ${part}`,
  partDone: (together) => (together === 1 ? 'Teil fertig' : `${together} Teile fertig`),
  beginPart: 'Teil starten',
  beginHint: 'Antippen, sobald die Hände am Teil sind',
  elementOf: (place, count) => `endet hier · ${place} von ${count}`,
  goOn: 'Weiter',
  stop: 'Stopp',
  stoppedState: 'Steht',
  reworkState: 'Nacharbeit',
  lastPart: (ms) => `Voriges Teil ${roundedClockFace(ms)}`,
  secondTapNote: 'Gleich nach dem Tippen davor: bisher nicht gezählt',
  tapHint: 'Je Teil einmal tippen, immer im selben Moment',
  goOnHint: 'Mit diesem Tippen geht die Arbeit weiter',
  reworkDone: 'Nacharbeit fertig',
  reworkDoneHint: 'Das Teil ist gut, die Arbeit geht weiter',
  thisPart: 'Dieses Teil',
  stopClock: 'Stillstand bisher',
  reworking: 'Nacharbeit bisher',
  partSoFar: (ms) => `Dieses Teil bisher ${clockFace(ms)}`,
  targetWords: { none: 'Zielzeit', typed: 'Zielzeit', standard: 'Vorgabezeit', takt: 'Takt' },
  noTarget: 'Keine Zielzeit',
  over: 'darüber',
  turnSoFar: 'Einsatz bisher, ohne Stillstände',
  planLabel: 'Mit Stillständen',
  position: {
    ahead: (ms) => `${wholeSeconds(ms)} voraus`,
    behind: (ms) => `${wholeSeconds(-ms)} im Verzug`,
    level: 'gleichauf',
  },
  // A decimal number takes the plural, 1,0 too.
  parts: (parts) => `= ${formatNumber(Math.abs(parts), 1)} Teile ${parts < 0 ? 'im Verzug' : 'voraus'}`,
  learning: 'Anlernen: es wird kein Stand geführt',
  breakUntil: (time) => `Pause bis ${time}: der Stand ruht`,
  noPosition: 'Keine Zielzeit, also kein Stand',
  doneCount: (count) => (count === 1 ? 'Teil fertig' : 'Teile fertig'),
  average: 'Mittelwert dieses Teils',
  averageOf: (n, done) => (n === done ? `(${n})` : `(${n} von ${done})`),
  averageNone: 'noch kein Mittelwert dieses Teils',
  undo: 'Rückgängig',
  undoWhat: {
    'part-begun': 'Start des Teils',
    'element-done': 'Ende des Abschnitts',
    'part-done': (ms) => `Teil fertig ${roundedClockFace(ms)}`,
    'part-changed': 'Teil gewechselt',
    'person-changed': 'Person gewechselt',
    stopped: '„Stopp“',
    resumed: '„Weiter“',
    rework: { stopped: 'Beginn der Nacharbeit', resumed: 'Ende der Nacharbeit' },
    answer: 'Antwort',
  },
  takenBack: (what) => `Zurückgenommen: ${what}`,
  changePart: 'Teil wechseln',
  endTurn: 'Einsatz beenden',
  orHandOver: 'oder übergeben',
  lastPartIs: 'Voriges Teil',
  outcomes: { good: 'Gut', rework: 'Nacharbeit', scrap: 'Ausschuss' },
  toRework: (count) => `${count} Nacharbeit`,
  changeTitle: 'Welches Teil ab jetzt?',
  back: 'Zurück',
  screenMaySleep: 'Bildschirm kann ausgehen',
  announceDone: (count, ms) => `Teil ${count} fertig, ${roundedClockFace(ms)}`,
  announceGoing: 'Es geht weiter',
  announceReworked: (ms) => `Nacharbeit fertig, ${clockFace(ms)}`,
  announceBegun: 'Teil gestartet',
};

/** A position moves while it is read: whole seconds. */
function wholeSeconds(ms: number): string {
  return clockFace(Math.round(ms / 1_000) * 1_000);
}
