import { decimalMinutes } from '../decimal-time';
import type { turnSetup as english } from '../en/turn-setup';
import { roundedClockFace } from '../rounded-clock-face';

/** Words of the screen before a turn: who, which part, and what anyone should know first. */
export const turnSetup: typeof english = {
  startTitle: 'Einsatz starten',
  who: 'Wer ist am Platz?',
  whoHint: 'Ein Kürzel oder Initialen. Der volle Name ist nicht nötig.',
  personCode: 'Kürzel',
  addPerson: 'Kürzel hinzufügen',
  anotherPerson: 'Anderes Kürzel',
  whichPart: 'Welches Teil?',
  partCode: 'Kürzel des Teils',
  partName: 'Name, falls es einen hat',
  target: 'Zielzeit für ein Teil (kann leer bleiben)',
  targetHint: 'Minuten und Sekunden wie 1:48, oder Dezimalminuten wie 1,8',
  targetEquals: (ms) => `= ${roundedClockFace(ms)}`,
  targetMinutes: (ms) => `für ein Teil, ${decimalMinutes(ms)} min`,
  targetFaults: {
    empty: '',
    'not-a-time': 'Das ist keine Zeit. 1:48, 0:06 oder 1,8 schreiben.',
    'over-59': 'Sekunden und Minuten gehen hier bis 59.',
    'too-short': 'Eine Zielzeit ist mindestens eine Sekunde lang.',
    'too-long': 'Eine Zielzeit ist höchstens einen Tag lang.',
  },
  addPart: 'Teil anlegen',
  anotherPart: 'Anderes Teil',
  cancel: 'Abbrechen',
  codeTaken: (code, target) => `${code} gibt es schon, ${target}: ändern unter Werkstatt.`,
  codeIsFull: (most) => `Ein Kürzel hat höchstens ${most} Zeichen: mehr passt nicht hinein.`,
  needsCode: 'Ein Teil braucht ein Kürzel.',
  targetInShop:
    'Die Zielzeit wird unter Werkstatt gesetzt, mit der PIN der Aufsicht. Das Teil geht auch ohne.',
  lastTurn: 'letzter Einsatz',
  madeLast: 'zuletzt',
  lookBack: (person, from, to) => `Letzte Aufzeichnung ansehen: ${person}, ${from} bis ${to}`,
  targetOf: (ms) => (ms === null ? 'keine Zielzeit' : `Zielzeit ${roundedClockFace(ms)}`),
  start: 'Start',
  chooseBoth: 'Person und Teil wählen',
  choosePerson: 'Wählen, wer am Platz ist',
  choosePart: 'Ein Teil wählen',
  startWith: (person, part, target) => `${person} · ${part} · ${target}`,
  demoLine: 'Nur mal ansehen?',
  openDemo: 'Beispielwerkstatt öffnen',

  // Cautions.
  cautionTitle: 'Vor dem ersten Einsatz',
  cautionAgain: 'Sicherheit und Fairness',
  cautions: [
    'Diese Uhr ist keine Schutzeinrichtung. Außerhalb von Schutzzäunen und Gefahrenbereichen anbringen, und nie mit einer Hand im Gefahrenbereich tippen.',
    'Vor dem Beheben einer Störung oder einem Werkzeugwechsel die Maschine abschalten und gegen Wiedereinschalten sichern. Diese Zeit wird niemandem angelastet.',
    'Örtliche Regeln, Vereinbarungen und das Urteil zugelassener Fachleute gehen allem vor, was hier steht.',
    'Keine Zielzeit setzt voraus, auf Erholung, Wasser oder Toilette zu verzichten. Stopp braucht keinen Grund. Schneller zu arbeiten belastet den Körper.',
    'Wo Staub oder Dämpfe sind, erst fragen, ob ein Tablet hineindarf.',
    'Prüfen, Reinigen und Sicherheitskontrollen gehören zur Arbeit: Eine Zielzeit, die dafür keine Zeit lässt, ist falsch.',
    'Wer angelernt wird, schwanger ist, eingeschränkt einsetzbar ist oder nach einer Verletzung zurückkommt, hat nur eine eigens vereinbarte Zielzeit.',
  ],
};
