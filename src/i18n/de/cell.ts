import type { cell as english, cellGoverns as englishGoverns, cellSource as englishSource } from '../en/cell';

const wholeCycles = (count: number) =>
  `${count} ${count === 1 ? 'vollständiger Zyklus' : 'vollständige Zyklen'}`;

/** Words of the Cell screen: what governs, and its frame. */
export const cell: typeof english = {
  reading: 'Studien, Einsätze und Lose werden gelesen …',
  trouble: (problem) => `Die Zelle konnte nicht gelesen werden: ${problem}`,
  tryAgain: 'Noch einmal',
  tabsName: 'Die Zelle',
  tabs: {
    governs: 'Was bestimmt',
    'what-if': 'Was wäre, wenn',
    'lead-time': 'Durchlaufzeit',
    people: 'Personen und Maschinen',
  },
  empty: {
    title: 'Die Zelle wird aus einer Studie der Arbeit berechnet',
    text: 'Ein Teil Abschnitt für Abschnitt aufnehmen: was die Hände tun, während die Maschine steht, was sie tun, während sie läuft, und die Maschine selbst.',
    go: 'Zu den Studien',
  },
  partial: (title, missing) => `${title} bleibt außen vor: von ${missing} wird kein Messwert verwendet.`,
  tooFew: (title, cycles) =>
    `${title} ist neuer, hat aber nur ${wholeCycles(cycles)}: verwendet wird eine ältere Studie mit mehr.`,
  tooShort: (title) => `${title} bleibt außen vor: der Zyklus ist kürzer als eine Sekunde.`,
  part: 'Teil',
  noCode: 'ohne Kürzel',
  allParts: 'Alle Teile',
  list: (names) =>
    names.length < 2 ? (names[0] ?? '') : `${names.slice(0, -1).join(', ')} und ${names.at(-1)}`,
  minutes: (figure) => `${figure} min`,
  percent: (figure) => `${figure}\u00a0%`,
  who: { operator: 'Person', machine: 'Maschine', other: 'Andere Person' },
  whoNumbered: (who, number) => `${who} ${number}`,
};

/** Words that say what a part is reckoned from. */
export const cellSource: typeof englishSource = {
  study: (title) => `Aus der Studie „${title}“`,
  on: (day) => `vom ${day}`,
  chosen: {
    newest: (of) => `, der neuesten von ${of}`,
    enough: (of, enough) =>
      `, von ${of} der neuesten, die jeden Abschnitt in mindestens ${enough} Zyklen zeigt`,
    most: (of, enough) => `, von ${of} der mit den meisten vollständigen Zyklen: ${enough} hat keine`,
  },
  cycles: wholeCycles,
  precision: (percent) => `, Zyklus ± ${percent} %`,
  flagged: (count) =>
    `. ${count === 1 ? 'Einer ihrer Messwerte ist' : `${count} ihrer Messwerte sind`} dort einen Blick wert; was niemand mit Angabe der Ursache ausschließt, zählt hier wie in der Vorgabe.`,
  thin: (part) =>
    `Zu wenige Zyklen, um sich für ${part} auf das Folgende zu stützen: mindestens fünf aufnehmen.`,
  mix: (shares) =>
    `Wie in den neuesten Einsätzen gefertigt: ${shares}. Hier lässt sich sonst nur jedes Teil einzeln durchspielen.`,
};

/** Words of the first page: who governs, and what to do next. */
export const cellGoverns: typeof englishGoverns = {
  next: {
    outside: (element) => `Als Nächstes: Handarbeit bei stehender Maschine verkürzen, zuerst „${element}“.`,
    inside: (element) => `Als Nächstes: Handarbeit bei laufender Maschine verkürzen, zuerst „${element}“.`,
    machine: () => 'Als Nächstes: die Maschine schneller machen.',
    other: (element) => `Als Nächstes: die andere Person entlasten, zuerst bei „${element}“.`,
    hands: (element) => `Als Nächstes: Handarbeit verkürzen, zuerst „${element}“.`,
  },
  tooEarly: 'Noch zu früh, um den nächsten Schritt zu nennen.',
  hasCycles: (part, cycles) =>
    `${part}: ${cycles} ${cycles === 1 ? 'vollständig aufgenommener Zyklus' : 'vollständig aufgenommene Zyklen'}.`,
  needed: (cycles) => `Nötig sind ${cycles} von einem Teil, mit Messwert zu jedem Abschnitt.`,
  pays: {
    outside: 'Weniger Handarbeit bei stehender Maschine lohnt sich',
    inside: 'Weniger Handarbeit bei laufender Maschine lohnt sich',
    machine: 'Eine schnellere Maschine lohnt sich',
    other: 'Die andere Person zu entlasten lohnt sich',
    hands: 'Weniger Handarbeit lohnt sich',
  },
  equalMix: 'Gerechnet mit gleich vielen von jedem Teil: kein Einsatz zeigt einen anderen Teilemix.',
  onEvery: 'bei jedem Teil',
  onNone: 'nirgends',
  fully: (parts) => `bei ${parts}`,
  partly: (parts) => `weniger bei ${parts}`,
  notOn: (parts) => `nicht bei ${parts}`,
  why: {
    most: (first, second) =>
      `Eine Sekunde weniger bei „${first}“ bringt ${second} gute Teile am Tag mehr: kein Abschnitt bringt mehr, und von den gleich guten dauert dieser am längsten.`,
    ofItsKind: (first, second) =>
      `Eine Sekunde weniger bei „${first}“ bringt ${second} gute Teile am Tag mehr; von den gleich guten seiner Art dauert dieser Abschnitt am längsten.`,
    byTenth: ({ name, tenth, second, firstTenth }) =>
      `Nach Anteil liegt „${name}“ vorn: 10 % weniger davon bringt ${tenth} statt ${firstTenth}, eine Sekunde weniger davon ${second}. Wo sich bei beiden derselbe Anteil sparen lässt, dort beginnen.`,
    byTenthToo: (tenth) => `10 % weniger davon bringt ${tenth}, ebenfalls am meisten.`,
  },
  partsTitle: 'Jedes Teil in dieser Zelle',
  minutesPart: 'min je Teil, ohne Stillstände',
  goodDay: 'gute Teile am Tag',
  dayIs: (hours) => `${hours} h, ohne Zuschläge`,
  governs: 'bestimmt',
  second: '1 Sekunde weniger davon: gewonnene Sekunden je Teil',
  kinds: {
    outside: 'Handarbeit, Maschine steht',
    inside: 'Handarbeit, Maschine läuft',
    machine: 'Maschine',
    other: 'andere Person',
  },
  tableNote:
    'Minuten ohne Stillstände. Gute Teile am Tag, wenn den ganzen Tag nur dieses Teil läuft; simuliert, mit Stillständen, Nacharbeit und gelegentlicher Arbeit.',
  governors: { hands: 'Handarbeit', machine: 'Maschine', tie: 'beide abwechselnd', other: 'andere Person' },
  detail: {
    hands: (code, count, of) =>
      `${code}: die Handarbeit bestimmt den Zyklus. In ${count} von ${of} aufgenommenen Zyklen wartete die Maschine darauf.`,
    machine: (code, count, of) =>
      `${code}: die Maschine bestimmt den Zyklus. In ${count} von ${of} aufgenommenen Zyklen wartete die Person auf sie.`,
    tie: (code, count, of) =>
      `${code}: Handarbeit und Maschine bestimmen abwechselnd. In ${count} von ${of} aufgenommenen Zyklen dauerte die Maschine länger.`,
    other: (code) =>
      `${code}: die andere Person bestimmt den Zyklus; die Person am Platz und die Maschine warten.`,
    alone: (code) => `${code}: es gibt keine Maschine, also bestimmt die Handarbeit den Zyklus.`,
    mix: (hands) => `Alle Teile: in ${hands} % der Zyklen wartet die Maschine auf die Handarbeit.`,
  },
  tieLoss: (minutes) =>
    `Das abwechselnde Warten aufeinander kostet ${minutes} je Teil; kein Mittelwert zeigt das.`,
  takeover: (pace) =>
    `Über einem Leistungsgrad von ${pace} dauert die Maschine länger als die Handarbeit daneben: wer schneller arbeitet, wartet dort nur.`,
  chart: 'Ein Zyklus: wer arbeitet, wer wartet',
  chartSays: (lanes) => `Die Zeit läuft nach unten. ${lanes}`,
  laneSays: (who, works, waits) => `${who}: arbeitet ${works}, wartet ${waits}.`,
  works: 'arbeitet',
  loaded: 'wird beladen',
  waits: 'wartet auf andere',
  use: 'genutzt',
  cycle: (minutes, parts) =>
    `${parts === 1 ? 'Zyklus' : `Runde von ${parts} Teilen`} nach Mittelwerten: ${minutes}, ohne gelegentliche Arbeit`,
  starts: (element) =>
    `Die Maschine startet, wenn die letzte Handarbeit bei stehender Maschine getan ist: hier mit dem Ende von „${element}“.`,
  noChart: 'Oben ein Teil wählen, um seinen Zyklus zu sehen: wer arbeitet, wer wartet.',
  legend: { working: 'arbeitet', attending: 'muss überwachen', waiting: 'wartet' },
  effects: (part) => `${part}: was ein kürzerer Abschnitt bringt`,
  element: 'Abschnitt',
  more: 'gute Teile am Tag mehr',
  secondLess: '1 s weniger',
  tenthLess: '10 % weniger',
  effectsNote:
    'Zuoberst steht, was je Sekunde am meisten bringt; wo eine Sekunde gleich viel zählt, was bei 10 % mehr bringt. Eine Sekunde gelegentlicher Arbeit ist nur gespart, wenn sie anfällt.',
  none: 'keine',
  ends: {
    inside: (parts) =>
      `Kürzere Handarbeit bei laufender Maschine bringt am Tag bis zu ${parts} mehr; dann bestimmt die Maschine, und noch kürzer bringt nichts.`,
    machine: (parts) =>
      `Eine schnellere Maschine bringt am Tag bis zu ${parts} mehr; dann bestimmt die Handarbeit, und noch schneller bringt nichts.`,
  },
  goodParts: (figure) => `${figure} ${figure === '1' ? 'gutes Teil' : 'gute Teile'}`,
  how: 'Wie das berechnet ist',
  howText: [
    'Jeder aufgenommene Zyklus zählt als Ganzes: Handarbeit bei stehender Maschine + das Längere aus Handarbeit daneben und Maschine; danach der Mittelwert über alle Zyklen. Die Zeiten sind Normalzeiten: Istzeit × Leistungsgrad.',
    'Der Mittelwert des jeweils Längeren liegt über dem längeren der beiden Mittelwerte: dieser Unterschied ist, was das Abwechseln kostet.',
    'Gelegentliche Arbeit zählt mit ihrer Häufigkeit; neben der laufenden Maschine zählt sie nur, soweit sie länger dauert als diese.',
    '1 Sekunde weniger: der mittlere Zyklus noch einmal, mit einer Sekunde weniger von dieser Arbeit in jedem Zyklus. Ab 0,75 heißt es, dass es sich lohnt, unter 0,05, dass es sich nicht lohnt. Daran zeigt sich, wer bestimmt: nach Anteil stünde ein langer Abschnitt auch dann vorn, wenn nur auf ihn gewartet wird.',
    '10 % weniger: die Zeit je Teil noch einmal, mit diesem Abschnitt in jedem Zyklus um 10 % kürzer, bezogen auf die guten Teile am Tag. Gute Teile je Sekunde: die gewonnenen Sekunden, bezogen auf die Zeit je Teil.',
    'Leistungsgrad, ab dem die Maschine bestimmt: 100 × Handzeit neben ihr ÷ Maschinenzeit.',
    'Quelle: Groover, Work Systems, Kapitel 13.',
  ],
  day: (hours, days) =>
    `Ein Tag hat ${hours} Arbeitsstunden: ${days === 1 ? 'wie der neueste Tag' : `Mittelwert der neuesten ${days} Tage`} mit Einsätzen.`,
  assumedDay: (hours) =>
    `Angenommen wird ein Tag von ${hours} Arbeitsstunden ohne Stillstand, bis Einsätze aufgezeichnet sind.`,
};
