import type { beforeAfterWords as english } from '../en/before-after';

/** As they stand after "an" and "aus". */
const ofDays = (count: number) => (count === 1 ? 'einem Tag' : `${count} Tagen`);
const lessOrMore = { less: 'weniger', more: 'mehr' } as const;

/** Words of before and after. */
export const beforeAfterWords: typeof english = {
  titleNone: 'Noch nichts verglichen',
  hint: 'Zwei Zeiträume, ein Unterschied, der zählt: festgelegt, bevor jemand hinsieht, denn eine hinterher gewählte Schwelle beweist nichts.',
  verdicts: {
    improved: (what) => `${what}: verbessert, mindestens um den Betrag, der zählt`,
    'improved-size-uncertain': (what) => `${what}: verbessert, um wie viel, ist unsicher`,
    'not-shown': (what) => `${what}: ein Unterschied ist nicht nachgewiesen`,
    'no-difference-that-matters': (what) => `${what}: kein Unterschied, der zählt`,
    'worse-size-uncertain': (what) => `${what}: verschlechtert, um wie viel, ist unsicher`,
    worse: (what) => `${what}: verschlechtert, mindestens um den Betrag, der zählt`,
  },
  cannot: {
    'too-few-days': 'Jeder Zeitraum braucht mindestens zwei Tage mit gewerteten Teilen.',
    'no-part-in-both': 'Kein Teil wurde in beiden Zeiträumen an mindestens zwei Tagen gefertigt.',
    'no-spread':
      'Die Tage unterscheiden sich überhaupt nicht; nichts sagt also, wie sicher ein Unterschied ist.',
  },
  size: (after, before, percent, side) =>
    `Nettozyklus ${after} je Teil statt ${before}: ${percent} % ${lessOrMore[side]} Zeit.`,
  sure: (difference, low, high) =>
    `Der Unterschied ist ${difference} und liegt zwischen ${low} und ${high} (95 %; was sich wiederholt, ist der Tag).`,
  rate: (times, low, high) => `${times}-fache Menge je Zeit (${low} bis ${high}).`,
  fixedBefore: (percent, time, when, by) =>
    `Vorher festgelegt: ${percent} % (${time}) zählen. Aufgeschrieben am ${when}${by ? ` von ${by}` : ''}.`,
  fixedAfter: (percent, time, when, by) =>
    `Zählen sollen ${percent} % (${time}). Aufgeschrieben am ${when}${by ? ` von ${by}` : ''}, als die späteren Tage schon gearbeitet waren: ob sie da schon jemand gesehen hatte, kann das Tablet nicht wissen.`,
  basis: (before, beforeDays, after, afterDays) =>
    `Vorher: ${before} Teile an ${ofDays(beforeDays)}. Nachher: ${after} Teile an ${ofDays(afterDays)}.`,
  fewDays: 'Weniger als fünf Tage auf einer Seite: wie Tage zufällig schwanken, ist kaum bekannt.',
  overMix: (codes) =>
    `Über einen gemeinsamen Teilemix aus ${codes}, gewichtet nach dem, was in beiden Zeiträumen gefertigt wurde.`,
  leftOut: (codes) => `Nicht enthalten, weil nicht in beiden gefertigt: ${codes}.`,
  changeInside:
    'In einem der Zeiträume ist eine Änderung der Arbeit notiert: er enthält mehr als ein Arbeitsverfahren.',
  picture: {
    title: 'Der Unterschied mit seinem Intervall, neben dem, was zählt',
    matters: 'zählt',
    same: 'kein Unterschied',
    less: '◂ weniger Zeit',
    more: 'mehr Zeit ▸',
    axis: 'Minuten je Teil, nachher − vorher',
  },
  beside: {
    title: {
      rose: (before, after) => `Gut beim ersten Mal stieg von ${before} auf ${after}`,
      fell: (before, after) =>
        `Gut beim ersten Mal fiel von ${before} auf ${after}: eine schnellere Zelle mit geringerer Ausbeute ist keine Verbesserung`,
      alike: (before, after) =>
        `Gut beim ersten Mal: ${before} vorher, ${after} nachher; das kann Zufall sein`,
      unknown: 'Neben der Zeit',
    },
    what: 'Neben der Zeit',
    before: 'Vorher',
    after: 'Nachher',
    yield: 'Gut beim ersten Mal',
    efficiency: 'Zeitgrad',
    perGood: 'Anwesenheitszeit je gutem Teil',
    leadTime: 'Durchlaufzeit, Ankunft bis frei',
    leadTimeValue: (median, p90) => `${median} (neun von zehn innerhalb von ${p90})`,
    noLots: 'keine Lose aufgezeichnet',
    note: 'Durchlaufzeit: Median der Arbeitszeit von der Ankunft eines Loses, bis seine Teile für den nächsten Arbeitsgang frei sind.',
    scrap: 'Ausschuss',
    percent: (value) => `${value} %`,
    between: (value, low, high) => `${value} % (${low} bis ${high})`,
    none: '–',
  },
  form: {
    open: 'Zwei Zeiträume vergleichen',
    title: 'Was geändert wurde',
    part: 'Teil',
    allParts: 'Alle Teile, über einen gemeinsamen Mix',
    beforeFrom: 'Vorher, von',
    beforeTo: 'bis',
    afterFrom: 'Nachher, von',
    afterTo: 'bis ',
    threshold: 'Unterschied, der zählt, %',
    thresholdHint:
      'Die kleinste Änderung, die den Aufwand lohnt: aus der Arbeit begründet, nicht aus diesen Zahlen.',
    by: 'Eigenes Kürzel',
    save: 'Festlegen, dann ansehen',
    order: 'Der frühere Zeitraum endet, bevor der spätere beginnt.',
  },
  others: 'Schon verglichen',
  old: {
    title: 'Eine Zeit des alten Verfahrens, aus der Zeit vor dem Tablet',
    says: 'Einmal von Hand gestoppt, lässt sie sich noch mit dem vergleichen, was das Tablet aufgezeichnet hat.',
    write: 'Eine alte Zeit aufschreiben',
    part: 'Teil',
    time: 'Alte Zeit für ein Teil, m:ss',
    newTime: 'Neue Zeit, m:ss, falls auch von Hand gestoppt',
    understood: (time) => `= ${time} je Teil.`,
    understoodBoth: (before, after, size) => `= ${before} vorher, ${after} jetzt je Teil: ${size}.`,
    size: (percent, side, times) => `${percent} % ${lessOrMore[side]} Zeit, ${times}-fache Menge je Zeit`,
    hours: 'Das ist eine Stunde oder mehr: fünf Minuten als 5:00 schreiben.',
    noPart: 'Eine Zeit gehört zu einem Teil, und die Werkstatt hat noch keines.',
    openShop: 'Ein Teil in der Werkstatt anlegen',
    nowByHand: 'Jetzt: auch von Hand gestoppt.',
    source: 'Wie sie gemessen wurde und von wem',
    noSource: 'üblich gewesen, ohne Quelle',
    by: 'Eigenes Kürzel',
    save: 'Aufschreiben',
    notATime: 'Das ist keine Zeit: als 5:00 schreiben.',
    result: (part, before, after, percent, side, times) =>
      `${part}: ${after} jetzt gegen ${before}: ${percent} % ${lessOrMore[side]} Zeit, ${times}-fache Menge je Zeit.`,
    caution: 'Eine Zeit ohne Streuung sagt, wie viel, und nicht, wie sicher.',
    now: (count) => `Jetzt: Mittelwert aus ${ofDays(count)}.`,
    takenAs: (source) => `Alte Zeit: ${source}.`,
    noneMade: (part, before) =>
      `${part}: ${before} vorher; heute keine Zeit zum Vergleich, da an den gelesenen Tagen keines gefertigt wurde.`,
  },
};
