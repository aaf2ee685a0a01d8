import type { review as english } from '../en/review';

const parts = (count: number) => `${count} ${count === 1 ? 'Teil' : 'Teile'}`;
const ofParts = (n: number, count: number) => `${n} von ${count} ${count === 1 ? 'Teil' : 'Teilen'}`;
/** As it stands after "in". */
const inTurns = (count: number) => `${count} ${count === 1 ? 'Einsatz' : 'Einsätzen'}`;

/** Words of the Review screen. */
export const review: typeof english = {
  reading: 'Tage werden gelesen …',
  trouble: (problem) => `Die Tage konnten nicht gelesen werden (${problem}). Nichts wurde gelöscht.`,
  tryAgain: 'Noch einmal',

  emptyTitle: 'Noch kein Einsatz aufgezeichnet',
  emptyText:
    'Teile, die unter Tempo angetippt werden, stehen hier, sobald sie fertig sind, jedes neben seiner Zielzeit.',
  openPace: 'Tempo öffnen',
  enterNeedsPart:
    'Ein Einsatz wird mit seinen Teilen nachgetragen: zuerst ein Teil in der Werkstatt anlegen.',
  openShop: 'Werkstatt öffnen',
  openDemo: 'Beispielwerkstatt ansehen',

  day: 'Tag',
  dayInList: (day, count) => `${day}: ${parts(count)}`,
  earlier: '◂ Tag davor',
  later: 'Tag danach ▸',
  noSuchDay: (day) => `Am ${day} wurde nichts aufgezeichnet.`,
  newestDay: 'Neuesten Tag zeigen',

  /** The day in words: what it was, then what it was made of. */
  head: {
    forPaper: (day) => `${day}. `,
    answer: (efficiency, lost) => `Zeitgrad ${efficiency}\u00a0%; ${lost}.`,
    took: (n, done, against, lost) => `${ofParts(n, done)}: ${against}; ${lost}.`,
    noTarget: (lost) => `Kein Teil dieses Tages erbrachte eine Zielzeit; ${lost}.`,
    noParts: (lost) => `An diesem Tag wurde kein Teil fertig; ${lost}.`,
    noTime: 'Der Einsatz begann, danach wurde nichts mehr angetippt.',
    entered: (count, efficiency, lost) =>
      `${parts(count)} nachgetragen, ${efficiency === null ? '' : `Zeitgrad ${efficiency}\u00a0%, `}${lost}.`,
    noneCounted: (lost) => `Noch kein Teil steht in einem Mittelwert; ${lost}.`,
    takenAway: 'Der nachgetragene Einsatz dieses Tages wurde wieder zurückgezogen.',
    lost: (time) => `${time} verloren`,
    lostUnknown: 'verlorene Zeit nicht bekannt',
    unaccounted: (time) => `${time} ungeklärt`,
    workAlone: (n, done, against) =>
      `Erbrachte Zeit ÷ Anwesenheitszeit. Die Arbeit allein (${ofParts(n, done)}): ${against}.`,
    nothingLost: 'keine Zeit verloren',
    made: (day) =>
      `${parts(day.done)} in ${inTurns(day.turns)} von ${day.turns > 1 ? 'zusammen ' : ''}${day.elapsed}: ${day.good} gut${day.rework > 0 ? ` (${day.good - day.rework} beim ersten Mal, ${day.rework} mit Nacharbeit)` : ''}, ${day.scrap} Ausschuss.`,
    mix: {
      harder: (mean, usual) =>
        `Schwererer Teilemix als sonst: ${mean} Zielzeit je Teil (ohne Rüsten), an anderen Tagen ${usual}.`,
      easier: (mean, usual) =>
        `Leichterer Teilemix als sonst: ${mean} Zielzeit je Teil (ohne Rüsten), an anderen Tagen ${usual}.`,
      usual: (mean, usual) =>
        `Teilemix wie sonst: ${mean} Zielzeit je Teil (ohne Rüsten), an anderen Tagen ${usual}.`,
    },
    mostLost: (reason, time) => `Die meiste Zeit ging verloren durch: ${reason}, ${time}.`,
    questions: (count) => `${count === 1 ? 'Eine Frage' : `${count} Fragen`} zu klären ▾`,
    stillOpen: (count) =>
      count === 1
        ? 'Ein Einsatz ist noch offen und bis zum letzten Tippen gezählt.'
        : `${count} Einsätze sind noch offen und bis zum letzten Tippen gezählt.`,
  },
  /** One wording wherever a time stands beside its target. */
  against: {
    faster: (percent) => `${percent}\u00a0% unter der Zielzeit`,
    slower: (percent) => `${percent}\u00a0% über der Zielzeit`,
    level: () => 'in der Zielzeit',
  },
  againstShort: {
    faster: { arrow: '◂', word: 'weniger' },
    slower: { arrow: '▸', word: 'mehr' },
    level: { arrow: '=', word: 'in der Zielzeit' },
  },

  pictureTitle: (day) => `Nettozyklus jedes Teils neben seiner Zielzeit, ${day}`,
  picture: {
    axis: 'Nettozyklus, Minuten je Teil (ohne Stillstände)',
    legend:
      'Balken bis zur dicken Marke: Mittelwert. Dünne Linie: eine Standardabweichung nach beiden Seiten. Hohe Marke mit Spitze: Zielzeit.',
    fewLegend: ' Weniger als fünf Teile: jedes ist ein Punkt, die dünne Linie ihre Spannweite.',
    note: (n, counted) => (counted < n ? `n ${counted} von ${n}` : `n ${n}`),
    target: (time) => `Zielzeit ${time}`,
    meanTarget: (time) => `mittlere Zielzeit ${time}`,
    verdict: (arrow, percent, word) => `${arrow} ${percent} % ${word}`,
    noTarget: 'keine Zielzeit',
    scrapLegend: ' Ein Ausschussteil brauchte seine Zeit und erbrachte keine Zielzeit.',
    meanNote: (clock, decimal, scrap) =>
      scrap > 0 ? `${clock}, ${scrap} Ausschuss` : `${clock} (${decimal} min)`,
    line: (line) =>
      `${line.part}: ${line.n === 1 ? 'ein Teil' : `${line.n} Teile`}, Mittelwert ${line.mean}, ${line.target}, ${line.verdict}.`,
  },

  sheet: {
    title: 'Teile des Tages',
    hint: 'Zahl antippen: so wurde sie errechnet.',
    part: 'Teil',
    n: 'n',
    counted: (counted) => `${counted}\u00a0gewertet`,
    mean: 'Netto\u00adzyklus, Mittel',
    spread: 'Streuung',
    target: 'Zielzeit',
    share: 'Zur Zielzeit',
    good: 'Gut beim ersten Mal',
    rework: 'Nach\u00adarbeit',
    scrap: 'Aus\u00adschuss',
    all: 'Alle Teile',
    minutes: (decimal) => `${decimal}\u00a0min`,
    /** Held together: a range that is broken over two lines reads as two figures. */
    fromTo: (shortest, longest) => `${shortest}\u2060–\u2060${longest}`,
    deviation: 'Std.-Abw.',
    range: 'Spannweite',
    oneOnly: 'nur ein Teil',
    noneCounted: 'keines gewertet',
    changed: 'tagsüber geändert',
    none: '–',
  },

  ledger: {
    category: 'Zeitart',
    time: 'Zeit',
    share: 'Anteil',
    attended: (attended, elapsed, meals) =>
      `Anwesenheitszeit: ${attended} = ${elapsed} − ${meals} Essenspausen nach Kalender.`,
    untapped: (pieces) => `Nicht als Pause angetippt; steht oben als ${pieces}.`,
  },

  lost: {
    title: 'Verlorene Zeit nach Grund',
    none: 'Es ging keine Zeit verloren.',
    unknown: (turns) =>
      `Nicht bekannt: ${turns === 1 ? 'ein Einsatz wurde' : `${turns} Einsätze wurden`} nachgetragen, und niemand hat angegeben, was verloren ging.`,
    unknownToo: (turns) =>
      `Nicht enthalten: was ${turns === 1 ? 'im nachgetragenen Einsatz' : `in ${turns} nachgetragenen Einsätzen`} verloren ging. Niemand hat es angegeben.`,
    reason: 'Grund',
    time: 'Zeit',
    count: 'Anzahl',
    all: 'Alle Gründe',
    besides: 'Nicht verloren und auch keine Arbeit an Teilen:',
    besidesLine: (name, time) => `${name} ${time}`,
    note: '„Nicht angegeben“ steht zuletzt, und niemand ist daran schuld.',
  },

  note: {
    write: 'Notiz zum Tag schreiben',
    isChange: 'Ab diesem Tag ist die Arbeit eine andere: Grenzen beginnen neu',
    by: 'Eigenes Kürzel',
    text: 'Was geschah',
    save: 'Notiz sichern',
    cancel: 'Abbrechen',
    changed: 'die Arbeit wurde geändert',
    before: (day, text) =>
      `Am ${day} wurde die Arbeit geändert (${text}): dieser Tag gehört zur Arbeit davor.`,
  },

  /** Was entfernt oder zurückgenommen wird, bleibt in den Einträgen. */
  takeAway: {
    away: 'Entfernen',
    back: 'Zurücknehmen',
    keep: 'Stehen lassen',
    note: 'Diese Notiz entfernen?',
    change: 'Diese Notiz entfernen? Dann beginnen die Grenzen an ihrem Tag nicht mehr neu.',
    timing: 'Diese Zeit entfernen?',
    quotation: 'Dieses Angebot zurücknehmen? Es bleibt in der Liste, so gekennzeichnet.',
    comparisonBack: 'Diesen Vergleich zurücknehmen',
    comparison: 'Er bleibt unter „Schon verglichen“, so gekennzeichnet.',
    wasBack: (day) => `am ${day} zurückgenommen`,
  },

  /** What is opened only by those who want it. */
  more: {
    corrections: (count) =>
      count === 1 ? 'Eine Berichtigung an diesem Tag' : `${count} Berichtigungen an diesem Tag`,
    atStation: (count, what) =>
      `${count === 1 ? 'Eine Frage wurde' : `${count} Fragen wurden`} am Platz beantwortet: ${what}.`,
    times: (count, what) => (count === 1 ? what : `${what} (${count}-mal)`),
  },

  hours: (hours, minutes) => (hours > 0 ? `${hours}\u00a0h\u00a0${minutes}\u00a0min` : `${minutes}\u00a0min`),
  close: 'Schließen',
};
