import type { promisesWords as english } from '../en/promises';

/** As they stand after "aus". */
const ofDays = (count: number) => (count === 1 ? 'einem Tag' : `${count} Tagen`);

/** Words of capacity, people needed, and quotations. */
export const promisesWords: typeof english = {
  sentence: (promise, kept, count, reached, of) =>
    `${promise} gute Teile am Tag lassen sich bei gewöhnlichem Teilemix zusagen: gemessen an ${ofDays(count)} bringen ${kept} so viele oder mehr. Von allen ${of} Tagen, auch schweren und leichten, schafften es ${reached}`,
  inWords: {
    '0.8': 'acht von zehn gewöhnlichen Tagen',
    '0.9': 'neun von zehn gewöhnlichen Tagen',
    '0.95': 'neunzehn von zwanzig gewöhnlichen Tagen',
  },
  tooFew: (count) =>
    `Was ein Tag bringen kann, lässt sich ab fünf gewöhnlichen Tagen sagen; bisher gibt es ${count === 0 ? 'keinen' : count === 1 ? 'einen' : count}`,
  basis: (count, of, worked) =>
    `Aus ${ofDays(count)} mit gewöhnlichem Teilemix, von ${of} gelesenen: ${worked} (Mittelwert, Student-t, Standardabweichung). Der Mittelwert wird nur an jedem zweiten Tag gehalten.`,
  keptLabel: 'Gehalten an',
  keptOn: { '0.8': '8 von 10 Tagen', '0.9': '9 von 10 Tagen', '0.95': '19 von 20 Tagen' },
  tries: 'Eine andere Zusage:',
  triesResult: (kept, of) =>
    `wäre an ${kept} von ${of} Tagen gehalten worden, schwere und leichte eingeschlossen.`,
  people: {
    title: 'Personalbedarf',
    quantity: (part) => `${part}, Teile`,
    hours: 'Stunden, die jede Person dafür hat',
    efficiency: 'Zeitgrad, %',
    result: (load, people) => `${load} Personen vor dem Aufrunden: ${people}.`,
    whole: (count) => (count === 1 ? 'eine Person' : `${count} Personen`),
    notAbove: 'Stunden und Zeitgrad sind Zahlen über 0.',
    targetPace: 'Nach Zielzeit: der Zeitgrad ist noch nicht bekannt.',
    note: '(Σ Teile × Zielzeit + Rüsten) ÷ (Stunden × Zeitgrad). Eingetragen sind der Auftrag oben und eine Schicht nach Kalender ohne Essenspause.',
  },
  quote: {
    title: 'Angebot',
    part: 'Teil',
    quantity: 'Teile',
    setUps: 'Rüstvorgänge',
    note: 'Für wen oder was',
    freeFrom: 'Frei ab',
    people: 'Personen daran',
    until: 'Wie viele bis zu diesem Tag?',
    countBy: (day, parts, part, isExpected) =>
      `Bis ${day}: ${parts} × ${part} ${isExpected ? 'sind zu erwarten' : 'nach Zielzeit'}.`,
    countRange: (low, high) => `${low}, wenn es langsam läuft, ${high}, wenn es gut läuft (95 %).`,
    countWorking: (attended, efficiency, setUps, perPart) =>
      `(${attended} Anwesenheitszeit bis dahin, alle Personen zusammen${efficiency === null ? '' : `, × ${efficiency} % Zeitgrad`}${setUps === null ? '' : ` − ${setUps} für Rüsten`}) ÷ ${perPart} s je Teil, ganze Teile.`,
    noTimeUntil: 'Bis dahin arbeitet nach Kalender niemand, oder der Tag liegt zu fern.',
    due: (day, people) =>
      `Fertig am ${day} mit ${people === '1' ? 'einer Person' : `${people} Personen`} daran.`,
    latest: (day) => `Am ${day}, wenn es langsam läuft.`,
    calendar: (hours) =>
      `${hours} je Person und Tag nach Kalender; andere Aufträge sind nicht berücksichtigt.`,
    noCalendar:
      'Unter Werkstatt steht keine Schicht: 8 h je Person, Montag bis Freitag, ohne andere Aufträge.',
    todayLeft: (hours) => `Heute zählt mit den ${hours}, die davon noch übrig sind.`,
    todayGone: 'Vom heutigen Tag zählt nichts.',
    range: (low, high) => `(${low} bis ${high})`,
    dueLine: (day, latest) =>
      day === latest ? `fertig am ${day}` : `fertig am ${day}, wenn es langsam läuft am ${latest}`,
    result: (total, quantity, part) => `${quantity} × ${part}: ${total} Anwesenheitszeit`,
    interval: (low, high, count) =>
      `Zwischen ${low} und ${high} (95 %), aus dem Zeitgrad von ${ofDays(count)}.`,
    noInterval: (gave, count) =>
      `Nach Zielzeit: Zeitgrad und Spanne brauchen fünf Tage mit Zielzeiten.${count > 0 ? ` Bisher aus ${ofDays(count)}: ${gave}\u00a0%.` : ''}`,
    standard: (perPart, setUp, source) =>
      `${perPart} je Teil, ${setUp === null ? 'für das Rüsten ist nichts festgelegt' : `${setUp} je Rüstvorgang`}. ${source}`,
    sources: {
      typed: 'Die Zeit eines Teils ist seine Zielzeit; eine Vorgabezeit hat es nicht.',
      standard: 'Die Zeit eines Teils ist seine Vorgabezeit.',
      size: 'Die Zeit für diese Größe wurde eingetippt, wie Planzeiten sie ergeben.',
    },
    faults: {
      quantity: 'Teile sind eine ganze Zahl ab 1.',
      setUps: 'Rüsten ist eine ganze Zahl oder 0: Es zählt keines.',
      people: 'Personen sind eine Zahl über 0: Es wird kein Tag genannt.',
    },
    anotherSize: 'Andere Größe',
    sizeCode: 'Größe',
    sizeTime: 'Vorgabezeit für ein Teil, m:ss',
    sizeHalf: 'Plus/minus, m:ss (darf leer bleiben)',
    sizeNote: 'Die Planzeiten unter Studie geben die Zeit einer Größe und ihre Unsicherheit.',
    notATime: 'Das ist keine Zeit: als 1:30 schreiben.',
    revision: (revision) => `Arbeitsverfahren, Revision ${revision}.`,
    noRevision: 'Für dieses Teil ist kein Arbeitsverfahren aufgeschrieben.',
    save: 'Angebot aufschreiben',
    given: 'Abgegebene Angebote',
    none: 'Noch keine.',
    line: (day, quantity, part, total) => `${day}: ${quantity} × ${part}, ${total}`,
    overhauled: 'Die Vorgabe dahinter wurde seither geändert: neu anbieten.',
    stands: 'Die Vorgabe dahinter gilt noch.',
  },
  setUp: {
    title: 'Was ein Rüstvorgang erbringt',
    now: (time) => `${time} je Rüstvorgang`,
    none: 'Nichts ist festgelegt: Rüsten erbringt keine Zeit, und der Zeitgrad zählt es, als wäre es verloren.',
    label: 'Vorgabezeit eines Rüstvorgangs, m:ss',
    save: 'Ab jetzt festlegen',
    note: 'Für Vergangenes gilt die Zeit, die damals festgelegt war.',
  },
  hours: (hours) => `${hours}\u00a0h`,
};
