import type { studyReduce as english } from '../en/study-reduce';

const ofWhole = (n: number) => `${n} ${n === 1 ? 'vollständigen Zyklus' : 'vollständigen Zyklen'}`;

/** Words of what is checked before a study is used: the clock, whether the work stood still, how often things come. */
export const studyReduce: typeof english = {
  clock: {
    title: 'Uhrenprobe',
    elapsed: 'Verstrichen, laut Uhr',
    before: 'Vor dem ersten Tippen',
    after: 'Nach dem letzten Messpunkt',
    effective: 'Abschnitte',
    ineffective: 'Ablauffremdes, und Warten auf die Maschine',
    unaccounted: 'Ungeklärt',
    unaccountedIs: (time, pct) => `${time}, ${pct} %`,
    good: 'Höchstens 2 % sind ungeklärt: die Uhren stimmen überein.',
    bad: (pct) => `Nicht brauchbar: ${pct} % der Zeit sind ungeklärt. Über 2 % wird die Studie wiederholt.`,
    none: 'Keine Uhrenprobe: die Studie wurde nicht hier aufgenommen oder läuft noch.',
    formula:
      'Ungeklärt = verstrichen − (vorher + nachher + Abschnitte + Ablauffremdes und Warten). Niebel & Freivalds; Grenze 2 %.',
    byTablet: 'Verglichen mit der eigenen Uhr des Tablets.',
    byShop: 'Abgelesen von der Uhr der Werkstatt.',
    type: 'Von der Werkstattuhr ablesen',
    started: 'Gekommen, h:mm oder h:mm:ss',
    finished: 'Gegangen',
    beforeMin: 'Vor dem ersten Tippen, min',
    afterMin: 'Nach dem letzten, min',
    fault: 'Beide Uhrzeiten als 7:05 oder 7:05:30 angeben, und die Minuten als Zahlen.',
    keep: 'Übernehmen',
    leave: 'So lassen',
  },
  oneLane: {
    whole: (runs) =>
      `Nacheinander aufgenommen: ${runs} wird vom Start der Maschine bis zum eigenen Tippen gelesen, mit der Arbeit darin, die währenddessen getan wurde. Wo die Maschine stoppte, bevor diese Arbeit getan war, ist ihre Zeit hier zu lang.`,
    behind: (work) =>
      `Nach dem Verfahren wird bei laufender Maschine getan: ${work}. Aufgenommen wurde es aber nach dem Stopp, also zählt es als bei stehender Maschine getan. Person und Maschine zugleich aufnehmen, um es im Lauf zu sehen.`,
  },
  steady: {
    title: 'Blieb das Tempo gleich?',
    few: (n) => `Handarbeit aus ${ofWhole(n)}: ab fünf lässt es sich sagen.`,
    trendFew: (n) => `Handarbeit aus ${ofWhole(n)}: ob sie sich ändert, zeigt sich ab zehn.`,
    none: (n) => `Kein Trend in der Handarbeit aus ${ofWhole(n)}.`,
    falling: (pct) =>
      `Die Zyklen wurden um ${pct} % kürzer: da wurde noch gelernt. Die Studie beschreibt einen Moment; aus ihr wird keine Vorgabe.`,
    rising: (pct) =>
      `Die Zyklen wurden um ${pct} % länger: Ermüdung, oder ein Werkzeug wird stumpf. Suchen, was von Zeit zu Zeit wiederkommt, und ihm eine Häufigkeit geben; hieraus wird keine Vorgabe.`,
    order: 'Kurze und lange Zyklen kommen streckenweise statt zufällig.',
    run: 'Acht oder mehr nacheinander liegen auf einer Seite des Mittelwerts.',
    beyond: (cycles) => `Außerhalb der natürlichen Grenzen: Zyklus ${cycles}.`,
    closer: (from, to) =>
      `Die Leistungsgrade brachten die Streuung der Handarbeit von ${from} % auf ${to} %.`,
    wider: (from, to) =>
      `Mit den Leistungsgraden streut die Handarbeit mehr als in den Istzeiten: von ${from} % auf ${to} %. Leistungsgrade, die dem Tempo folgen, verringern die Streuung.`,
    chart: 'Normalzeit der Handarbeit jedes vollständigen Zyklus, der Reihe nach',
    source:
      'Steigung und Hälften aus Logarithmen, Runs-Test um den Median, natürliche Grenzen: NIST/SEMATECH e-Handbook.',
  },
  frequency: {
    sources: {
      method: 'nach dem Verfahren',
      record: 'aus Aufzeichnungen der Fertigung',
      observed: 'wie in dieser Studie gesehen',
    },
    source: 'Woher das bekannt ist',
    seen: (count, units) =>
      `Gesehen: ${count === 1 ? 'einmal' : `${count}-mal`} in ${units} ${units === 1 ? 'Arbeitseinheit' : 'Arbeitseinheiten'}`,
    between: (low, high) =>
      `. Durch Zufall allein könnte das alles von einmal je ${low} bis einmal je ${high} sein.`,
    never: '. Das sagt nichts darüber, wie oft es kommt.',
    few: 'Weniger als fünfmal gesehen: im Verfahren oder in Aufzeichnungen der Fertigung nachsehen.',
    observe: (units) => `Gesehenes nehmen: einmal je ${units}`,
    record: 'Laut Aufzeichnungen der Fertigung einmal je',
    keep: 'Übernehmen',
    interval: 'Intervall: Garwood 1936.',
  },
  combination: {
    title: 'Standardarbeits-Kombinationsblatt',
    heads: ['Nr.', 'Schritt', 'Hand', 'Auto', 'Gehen'],
    together: 'Zusammen',
    cycle: (time) => `Zyklus ${time}`,
    target: (time) => `Zielzeit ${time}`,
    sum: (cycle, waiting) =>
      `Ein Zyklus braucht ${cycle} Normalzeit; davon wartet die Person ${waiting}. Zuschläge und gelegentliche Arbeit kommen hinzu.`,
    starts: (machine, element) => `${machine} startet, wenn „${element}“ endet.`,
    key: 'Durchgezogen: von Hand. Gestrichelt: die Maschine läuft. Wellig: Gehen. Pfeil an beiden Enden: Warten.',
  },
  paper: {
    printed: (when) => `Gedruckt ${when} aus den Einträgen bis dahin.`,
    formulas: 'Formeln: NT = Mittel von OT · R ÷ 100; ± = t · s ÷ √n; ',
    signs: ['Arbeitsstudien', 'Aufsicht', 'Gesehen von der Person am Platz oder ihrer Vertretung'],
    print: 'Drucken',
  },
};
