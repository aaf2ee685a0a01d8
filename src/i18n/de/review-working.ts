import type { reviewWorking as english } from '../en/review-working';

/** Words with which a figure of the Review screen explains itself. */
export const reviewWorking: typeof english = {
  numbers: 'Zahlen, die eingingen',
  seconds: 'Nettozyklen in der Reihenfolge, in der sie gefertigt wurden, Sekunden:',
  count: {
    title: (part) => `n von ${part}`,
    says: 'An diesem Tag als fertig angetippte Teile, ohne zurückgenommenes Antippen und ohne zweites, hinter dem kein Teil stehen kann.',
    put: (counted, n) =>
      `${counted} von ${n} gewertet: die anderen sind in keinem Mittelwert, weil eine Frage dazu offen ist oder jemand sie herausgenommen hat.`,
  },
  mean: {
    title: (part) => `Mittlerer Nettozyklus von ${part}`,
    says: 'Nettozyklus: vom Antippen des vorigen Teils bis zum Antippen dieses Teils, ohne Stillstände; bei einem Teil, das im Los bearbeitet wird, die dafür aufgewendete Zeit. Nacharbeit und Ausschuss zählen, Teile mit offener Frage und herausgenommene nicht.',
    none: 'Noch zählt kein Teil: die Fragen dazu stehen unter „Zu klären“.',
    formula: 'Mittelwert = Summe der Nettozyklen ÷ n gewertet',
    put: (sum, n, mean, clock) => `${sum} min ÷ ${n} = ${mean} min = ${clock}`,
  },
  deviation: {
    title: (part) => `Streuung von ${part}`,
    says: 'Standardabweichung der Nettozyklen als Stichprobe: etwa so weit liegt ein einzelnes Teil vom Mittelwert entfernt. Sie sagt, wie gleichmäßig die Teile liefen, nicht, wie gut jemand gearbeitet hat.',
    formula: 's = √( Summe von (Nettozyklus − Mittelwert)² ÷ (n − 1) )',
    put: (n, mean, deviation) => `n ${n}, Mittelwert ${mean} min: s = ${deviation} min`,
  },
  range: {
    title: (part) => `Streuung von ${part}`,
    says: 'Bei zwei bis vier Teilen sagt eine Standardabweichung wenig, daher stehen hier der kürzeste und der längste Zyklus.',
    formula: 'Spannweite = kürzester bis längster Nettozyklus',
    one: 'Ein einzelnes Teil hat keine Streuung.',
  },
  target: {
    title: (part) => `Zielzeit von ${part}`,
    says: 'Die Zeit, die ein Teil dauern soll, wie das letzte Teil des Tages sie hatte. Die Werkstatt zeigt, woher sie kommt.',
    changed:
      'Sie wurde während des Tages geändert. Jedes Teil wird mit der Zielzeit verglichen, die es selbst hatte.',
    none: 'Für dieses Teil ist keine Zielzeit festgelegt, also wird es mit keiner verglichen.',
  },
  share: {
    title: (part) => `Zur Zielzeit, ${part}`,
    all: 'Zur Zielzeit, alle Teile des Tages',
    says: 'Nettozeit der Teile durch die Zeit, die ihre Zielzeiten erlauben. Jedes Teil zählt mit der Zielzeit, die es hatte. Ein Ausschussteil brauchte seine Zeit und erbringt keine Zielzeit. Teile ohne Zielzeit zählen auf keiner Seite. Eine Vorgabezeit als Zielzeit enthält Zuschläge; Nettozyklen dauern daher meist weniger.',
    formula: 'Anteil = Summe der Nettozyklen ÷ Summe der Zielzeiten guter Teile',
    put: (of) =>
      `${of.net} min ÷ ${of.target} min = ${of.share} %: ${of.against} (${of.n} ${of.n === 1 ? 'Teil' : 'Teile'} mit Zielzeit${of.scrap > 0 ? `, davon ${of.scrap} Ausschuss` : ''})`,
  },
  outcome: {
    title: (part) => `Gut, Nacharbeit und Ausschuss von ${part}`,
    says: 'Wie unter Tempo beurteilt. Ein Teil, das niemand beurteilt hat, zählt als gut: gut beim ersten Mal.',
    put: (good, rework, scrap, n) => `${good} + ${rework} + ${scrap} = ${n}`,
  },
  elapsed: {
    title: 'Verstrichene Zeit',
    says: 'Vom ersten Eintrag jedes Einsatzes bis zu seinem letzten, zusammengezählt. Sie ist kein Nachweis von Arbeitsstunden.',
    formula: 'verstrichen = Summe aller Zeitarten',
  },
  category: {
    formula: 'Summe der Strecken dieser Zeitart',
    says: {
      cycle:
        'Von Antippen zu Antippen, ohne Stillstände: die Nettozyklen der Teile und, solange ein Einsatz offen ist, die des Teils in Arbeit.',
      'set-up': 'Gestoppt, mit einem Grund, den die Werkstatt als Rüsten zählt.',
      stoppage: 'Gestoppt, mit einem Grund, den die Werkstatt als Stillstand zählt, oder ohne Angabe.',
      rework: 'Gestoppt, mit einem Grund, den die Werkstatt als Nacharbeit zählt.',
      'planned-break': 'Gestoppt, mit einem Grund, den die Werkstatt als geplante Pause zählt.',
      'called-away':
        'Gestoppt, mit einem Grund, den die Werkstatt als weggerufen zählt. Das steht in keinem Tempo einer Person und in keiner Zeit eines Teils.',
      unaccounted: 'Niemand hat gesagt, was es war: meist die Zeit nach dem letzten Teil eines Einsatzes.',
    },
    put: (time, elapsed, share) => `${time} von ${elapsed} verstrichener Zeit = ${share} %`,
  },
  lost: {
    says: 'Von „Stopp“ bis zu dem Antippen, mit dem es weiterging. Es gilt der zuletzt genannte Grund. Rüsten und geplante Pausen sind nicht dabei: diese Zeit hat niemand verloren.',
    formula: 'Zeit = Summe der Stillstände mit diesem Grund, in ganzen Sekunden',
    put: (count, time) => `${count} ${count === 1 ? 'Stillstand' : 'Stillstände'}, zusammen ${time}`,
  },
};
