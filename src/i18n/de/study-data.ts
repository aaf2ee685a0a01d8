import type { studyData as english } from '../en/study-data';

/** Words of standard data: an element's time for parts of any size. */
export const studyData: typeof english = {
  title: 'Planzeiten',
  none: 'Noch kein Abschnitt wurde an Teilen mehrerer Größen gemessen. Im Verfahren angeben, womit ein Abschnitt wächst, die Größe jedes Teils nennen und Teile von vier Größen oder mehr aufnehmen.',
  element: 'Abschnitt und womit er wächst',
  pair: (element, driver) => `${element}, nach ${driver}`,
  formula: (a, b, unit, driver) => `NT = ${a} ${b} · ${driver}, in ${unit}`,
  constant: 'Konstante a',
  slope: 'Je Einheit der Größe, b',
  spread: 'Streuung um die Gerade, s',
  fit: 'R²',
  range: 'Untersuchte Größen',
  rangeIs: (low, high, sizes, n) =>
    `${low} bis ${high}: ${sizes} ${sizes === 1 ? 'Größe' : 'Größen'}, ${n} ${n === 1 ? 'Messwert' : 'Messwerte'}`,
  lack: 'Anpassungsmangel F',
  lackIs: (f, p) => `${f}, Wahrscheinlichkeit ${p}`,
  tiny: 'unter 0,01',
  plusMinus: (value, half) => `${value} ± ${half}`,
  warnings: {
    'few-sizes': 'Weniger als vier Größen: durch zwei Punkte geht immer eine Gerade.',
    'few-readings': 'Eine Größe hat weniger als vier Messwerte.',
    bends: 'Die Messwerte biegen von einer Geraden ab: eine andere Einflussgröße, oder zwei Bereiche.',
    'negative-constant':
      'Die Konstante liegt unter null: unterhalb der untersuchten Größen ist die Gerade falsch.',
    'one-size-decides': 'Eine Größe hält die Gerade allein: Größen dazwischen untersuchen.',
    constant:
      'Kein Wachstum ist zu erkennen, und keines, das ins Gewicht fiele: der Abschnitt ist bei jeder Größe gleich.',
  },
  ask: (element) => `${element} allein, für eine Größe`,
  whole: 'Das ganze Teil',
  wholeMissing: (elements) => `Nicht bekannt: kein Messwert sagt es von ${elements}.`,
  wholeNote: 'NT je Teil: nach der Größe, mit der jeder wächst, sonst sein Mittelwert.',
  parts: 'Teile im Angebot',
  mean: (time, half) => `${time}, ± ${half} als Mittelwert`,
  each: (parts, half) =>
    parts === 1 ? `ein Teil allein ± ${half}` : `der Durchschnitt von ${parts} Teilen ± ${half}`,
  outside: (side) =>
    `Diese Größe liegt weit ${side === 'below' ? 'unter' : 'über'} den untersuchten. Dort sagt die Gerade nichts: ein Teil dieser Größe aufnehmen.`,
  justOutside: 'Diese Größe liegt knapp außerhalb der untersuchten.',
  sizeFault: 'Eine Größe über 0 und eine ganze Zahl von Teilen angeben.',
  picture: (element) => `Messwerte von ${element} nach Größe, mit der angepassten Geraden`,
  source:
    'Kleinste Quadrate; Intervalle bei 95 %: Montgomery, Peck and Vining, Introduction to Linear Regression Analysis, Kapitel 2. Anpassungsmangel: Draper and Smith, Applied Regression Analysis, Abschnitt 2.1.',
  hold: 'Das gilt nur für diese Bedingungen und dieses Verfahren.',
};
