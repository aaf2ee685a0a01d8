import type { reviewWeeks as english } from '../en/review-weeks';

const days = (count: number) => (count === 1 ? 'ein Tag' : `${count} Tage`);
/** As they stand after "an", "aus" and "von". */
const ofDays = (count: number) => (count === 1 ? 'einem Tag' : `${count} Tagen`);

/** Words of the weeks. */
export const reviewWeeks: typeof english = {
  figure: 'Verfolgen',
  figures: {
    efficiency: 'Zeitgrad',
    'per-good': 'Zeit je gutem Teil',
    'first-pass': 'Erstausbeute',
  },
  part: (code) => `Teil ${code}`,
  axis: {
    efficiency: 'erbracht ÷ anwesend, %',
    'per-good': 'Anwesenheitsminuten je gutem Teil',
    'first-pass': 'gut beim ersten Mal, %',
    part: 'mittlerer Nettozyklus, Minuten',
  },
  value: {
    percent: (value) => `${value}\u00a0%`,
    decimal: (minutes) => `${minutes}\u00a0min`,
  },
  sentence: {
    since: (name, day) => `${name} seit ${day}`,
    before: (sentence, first, last, middle) =>
      `${sentence.replace(/\.$/, '')}. Davor, ${first} bis ${last}: Median ${middle}`,
    calm: (name, centre) => `${name}: ${centre}, und kein Tag fällt auf`,
    signals: (name, centre, list) => `${name}: ${centre}. Auffällig: ${list}`,
    tooFew: (name, middle, count) =>
      `${name}: ${middle}, der Median von ${ofDays(count)}. Ab zehn Tagen sagen Grenzen, was Zufall ist.`,
    none: 'Noch nichts zu verfolgen: kein Tag hat diesen Wert.',
  },
  standing: {
    provisional: (count) =>
      `Grenzen aus ${ofDays(count)}: vorläufig. Ab zwanzig Tagen stehen sie fest und gelten, bis eine Änderung notiert wird.`,
    firm: 'Grenzen aus den ersten zwanzig Tagen dieses Zeitraums. Sie gelten, bis eine Änderung notiert wird.',
    odd: 'Ein auffälliger Tag oder nur ein Teil eines Tages ist darunter und verschiebt Mittelwert und Grenzen.',
  },
  wolf: (alarms, count) =>
    `Aus den Unterschieden von Teil zu Teil wären die Grenzen viel zu eng: ${alarms} von ${ofDays(count)} mit gemessenen Teilen erschienen auffällig, bloß wegen Teilemix und Besetzung.`,
  period: (first, last) => `${first === null ? '' : `${first} bis `}${last}. `,
  pictureTitle: (name) => `${name}, Tag für Tag`,
  picture: (run) =>
    `${days(run.days)} vom ${run.first} bis zum ${run.last}. ${run.sentence}. Die Werte stehen unter dem Bild.`,
  centre: (value) => `Mittelwert ${value}`,
  middle: (value) => `Median ${value}`,
  upper: (value) => `Grenze ${value}`,
  lower: (value) => `Grenze ${value}`,
  target: (value) => `Zielzeit ${value}`,
  method: (revision) => `Verfahren Revision ${revision}`,
  count: 'n',
  legend:
    'Ein Punkt je Tag. Waagrechte Linie: Mittelwert, oder Median, solange es keine Grenzen gibt. Gepunktet: Grenzen dessen, was der Zufall tut (Mittelwert ± 2,66 × mittlerer Schritt von Tag zu Tag). Mit Ring: auffällig.',
  countLegend: { good: ' n: gute Teile.', done: ' n: fertige Teile.' },
  targetLegend: ' Gestrichelte Linie: Zielzeit.',
  fewLegend: ' Hohl: weniger als fünf Teile oder nur ein Teil eines Tages.',
  changeLegend: ' Senkrechte Linie: die Arbeit wurde geändert, Grenzen beginnen neu.',
  steps: {
    title: 'Schritte von Tag zu Tag',
    pictureTitle: (name) => `${name}: wie weit jeder Tag vom vorigen entfernt liegt`,
    says: (mean, limit) =>
      `Mittlerer Schritt ${mean}; ein Schritt über ${limit} sagt, dass ein Tag anders war als der vorige.`,
    axis: { time: 'Schritt, Minuten', percent: 'Schritt, Prozentpunkte' },
    centre: (value) => `Mittelwert ${value}`,
    upper: (value) => `Grenze ${value}`,
    points: (value) => `${value} Punkte`,
    note: 'Gleitende Spannweite; ihre Grenze ist 3,27 × der mittlere Schritt, aus dem auch die Grenzen oben kommen.',
  },
  sheet: {
    title: (count) => `Die Werte von ${ofDays(count)}`,
    day: 'Tag',
    value: 'Wert',
    n: 'n',
    said: 'Was die Regelkarte sagt und was notiert wurde',
    partDay: 'nur ein Teil eines Tages',
    signals: {
      'beyond-limits': { high: 'über der Grenze', low: 'unter der Grenze' },
      'eight-on-one-side': {
        high: 'achter in Folge über dem Mittelwert',
        low: 'achter in Folge unter dem Mittelwert',
      },
    },
  },
  notes: {
    title: 'Notizen zu Tagen',
    write: 'Notiz zu einem Tag schreiben',
    none: 'Keine Notiz zu diesen Tagen.',
  },
  lost: {
    title: 'Was am meisten gekostet hat',
    which: 'Über welche Tage?',
    since: (day) => `Alles seit ${day}`,
    week: (monday) => `Die Woche vom ${monday}`,
    sentence: (reason, cost, share, of, since, until) =>
      `${reason}: ${cost} Ausstoß ${until === null ? `seit dem ${since}` : `vom ${since} bis zum ${until}`}, ${share} % von insgesamt ${of}.`,
    none: 'An diesen Tagen ging keine Zeit verloren.',
    cost: 'Kosten an Ausstoß',
    recorded: 'Aufgezeichnet',
    soFar: 'Bis hierher',
    note: 'Ein Stillstand kostet weniger, als er dauert, wo Maschine oder Person laut Angabe weiterarbeitete. Was niemand angegeben hat, steht zuletzt.',
  },
  standards: {
    title: 'Zielzeiten, die falsch aussehen',
    cannotTell:
      'Noch nicht zu sagen: dazu braucht es mindestens zwei Teile mit Zielzeit, an fünf Tagen nebeneinander gefertigt.',
    none: 'Keine: kein Teil braucht viel mehr oder weniger von seiner Zielzeit als die anderen von ihrer.',
    more: (part, percent, count) =>
      `${part} braucht ${percent} % mehr von seiner Zielzeit als die anderen Teile von ihrer, gleich in wessen Händen, an ${ofDays(count)}. Die Zielzeit prüfen, nicht die Personen.`,
    less: (part, percent, count) =>
      `${part} braucht ${percent} % weniger von seiner Zielzeit als die anderen Teile von ihrer, gleich in wessen Händen, an ${ofDays(count)}. Die Zielzeit prüfen, nicht die Personen.`,
  },
  people: {
    title: 'Werte einzelner Personen',
    note: 'Verborgen, solange kein Zweck besteht; er wird mit dem eigenen Kürzel festgehalten. Nach den eigenen Teilen, ohne Stillstände, ab fünf Tagen. In der Reihenfolge der Kürzel: keine Rangliste.',
    purpose: 'Zweck',
    by: 'Eigenes Kürzel',
    show: 'Festhalten und zeigen',
    person: 'Kürzel',
    dayCount: 'Tage',
    partCount: 'Teile',
    share: 'Nettozeit ÷ Zielzeit',
    value: (percent, half) => `${percent} ± ${half}\u00a0%`,
    tooFew: 'weniger als fünf Tage',
    period: (from, to, isCut) =>
      `${from} bis ${to}${isCut ? ', seit die Arbeit geändert wurde' : ''}. ±: 95-%-Intervall des Mittelwerts der Tage.`,
    hide: 'Wieder verbergen',
    shown: (purpose) => `Festgehaltener Zweck: ${purpose}`,
    looks: (count) => (count === 1 ? 'Einmal angesehen' : `${count}-mal angesehen`),
    look: (day, by, purpose) => `${day}, ${by}: ${purpose}`,
  },
};
