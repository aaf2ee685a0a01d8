import type { cellWhatIf as english } from '../en/cell-what-if';

/** How often something comes: with every part, or once in so many. */
const onceIn = (parts: number) => (parts === 1 ? 'bei jedem Teil' : `einmal je ${parts} Teile`);

/** Words of the page that tries changes. */
export const cellWhatIf: typeof english = {
  title: 'Was würde die Zelle verändern?',
  begin: 'Etwas ändern: hier steht dann, was es bewirkt.',
  reset: 'Wie es jetzt ist',
  work: 'Arbeit',
  lots: 'Lose',
  speed: 'Maschinentempo',
  fixed: 'Maschinenminuten, die das Tempo nicht ändert',
  passes: 'Durchgänge',
  loading: 'Beladezeit',
  element: 'Ein Abschnitt',
  elementTime: 'Zeit dieses Abschnitts',
  done: 'Ausgeführt',
  places: {
    external: 'bei stehender Maschine',
    internal: 'bei laufender Maschine',
    other: 'von einer anderen Person',
  },
  byOperator: 'von der Person am Platz',
  machines: 'Maschinen',
  buffer: 'Ablageplätze vor der anderen Person',
  arrivalLot: 'Teile, die zusammen ankommen',
  refillAt: 'Restbestand bei ihrer Ankunft',
  trolley: 'Teile, die zusammen abgehen',
  people: 'Personen',
  of: (what, value) => `${what}: ${value}`,
  takeBack: (change) => `Zurücknehmen: ${change}`,
  less: (what) => `${what}: weniger`,
  more: (what) => `${what}: mehr`,
  faster: (minutes, parts) => `${minutes} weniger je Teil: ${parts} Teile mehr am Tag.`,
  slower: (minutes, parts) => `${minutes} mehr je Teil: ${parts} Teile weniger am Tag.`,
  noneShown: {
    faster: (minutes, difference) =>
      `${minutes} weniger je Teil, aber kein belegter Unterschied an guten Teilen am Tag: ${difference}.`,
    slower: (minutes, difference) =>
      `${minutes} mehr je Teil, aber kein belegter Unterschied an guten Teilen am Tag: ${difference}.`,
  },
  noEffect: {
    hands:
      'Keine Wirkung auf das Tempo, weil die Handarbeit bestimmt: die Maschine wartet schon jetzt auf sie.',
    machine:
      'Keine Wirkung auf das Tempo, weil die Maschine bestimmt: die Person wartet schon jetzt auf sie.',
    tie: 'Keine Wirkung auf das Tempo: was gespart wird, geht im Warten auf.',
    other:
      'Keine Wirkung auf das Tempo, weil die andere Person bestimmt: der Rest der Zelle wartet schon jetzt.',
  },
  lotsOnly: 'Das Tempo bleibt: Lose ändern, wie lange Teile warten, nicht die Arbeit.',
  waiting: {
    faster: (parts) => `${parts} Teile mehr am Tag: die beiden Personen warten weniger aufeinander.`,
    slower: (parts) => `${parts} Teile weniger am Tag: die beiden Personen warten mehr aufeinander.`,
  },
  alone: 'Keine Wirkung auf das Tempo: die Arbeit bleibt gleich.',
  exchange: {
    faster: (parts, { name, every, before }) =>
      `${parts} Teile mehr am Tag, weil „${name}“ nur ${onceIn(every)} anfällt statt ${onceIn(before)}.`,
    slower: (parts, { name, every, before }) =>
      `${parts} Teile weniger am Tag, weil „${name}“ ${onceIn(every)} anfällt statt ${onceIn(before)}.`,
  },
  tookOver: {
    faster: {
      hands: 'Ab hier bestimmt die Handarbeit: eine noch schnellere Maschine bringt nichts.',
      machine: 'Ab hier bestimmt die Maschine: noch schnellere Handarbeit daneben bringt nichts.',
      tie: 'Ab hier bestimmen Handarbeit und Maschine abwechselnd: mehr von einem bringt weniger.',
      other: 'Ab hier bestimmt die andere Person.',
    },
    slower: {
      hands: 'Jetzt bestimmt die Handarbeit.',
      machine: 'Jetzt bestimmt die Maschine.',
      tie: 'Jetzt bestimmen Handarbeit und Maschine abwechselnd.',
      other: 'Jetzt bestimmt die andere Person.',
    },
  },
  leadTime: (now, then) => `Ein Teil ist ${then} in der Zelle statt ${now}.`,
  present: 'jetzt',
  proposed: 'dann',
  difference: 'Unterschied',
  rows: {
    minutes: 'Minuten je Teil, ohne Stillstände',
    perDay: 'Gute Teile am Tag',
    promise: 'an 9 von 10 Tagen gehalten',
    lead: 'Durchlaufzeit, Mittelwert, min',
    leadHigh: 'Durchlaufzeit, 9 von 10 bis, min',
    inside: 'Teile in der Zelle',
    people: 'Personen',
    personHour: 'Gute Teile je Personenstunde',
    machine: 'Maschine läuft, Anteil am Tag',
  },
  interval: (difference, half) => `${difference} ± ${half}`,
  notShown: 'keiner belegt',
  isNotShown: (difference) => `${difference}, keiner belegt`,
  simulated: (days, seed) =>
    `${days} Tage simuliert aus den eigenen Zyklen und Stillständen der Werkstatt, Startzahl ${seed}, derselbe Zufall für beide.`,
  anotherSeed: 'Anderer Zufall',
  longRun: (days) => `${days} Tage simulieren`,
  progress: (done, days) => `${done} von ${days} Tagen`,
  stop: 'Hier anhalten',
  daysTitle: 'Gute Teile am Tag',
  daysSay: (low, median, high) =>
    `Ein Tag von zehn hat weniger als ${low}, die Hälfte mehr als ${median}, einer von zehn mehr als ${high}.`,
  median: 'Hälfte',
  p10: '1 von 10 unter',
  p90: '1 von 10 über',
  chartNow: 'Der Zyklus jetzt',
  chartThen: 'Der Zyklus dann',
  how: [
    'Jedes simulierte Teil bekommt die Zeiten eines aufgenommenen Zyklus, durch Zufall gezogen; wo ein Zyklus dem vorigen ähnelt, werden kurze Folgen gezogen. Stillstände, Ausschuss und Nacharbeit kommen so oft und dauern so lange wie in den neuesten Einsätzen; ein Nacharbeitsteil braucht noch einmal die Handzeit eines Teils.',
    'Minuten je Teil sind ohne Stillstände, Nacharbeit und Ausschuss; alles andere in der Tabelle enthält sie.',
    'Ein Stillstand hält die Maschine auf, wo es unter „Personen und Maschinen“ so angegeben ist; sonst die Person, und die Maschine beendet ihren Zyklus.',
    'Mit dem Antippen kommt, was zehn Tage Zufall sagen; alle Tage folgen einen Augenblick später.',
    'Gelegentliche Arbeit, die einmal je Wagen anfällt, fällt so oft an, wie der Wagen geht.',
    'Jetzt und dann treffen auf denselben Zufall, damit das Intervall des Unterschieds schmal ist: mittlerer Unterschied nach Tagen ± t·s/√n, bei 95 %. Eine Durchlaufzeit zählt an dem Tag, an dem ihr Teil frei wird.',
    'Maschinenzeit dann = was das Tempo nicht ändert + (der Rest) × Durchgänge ÷ Tempo.',
    'An zwanzig zufälligen Zellen liefert die Simulation dieselben Ergebnisse wie ein unabhängiges Paket (SimPy), und die exakten der Warteschlangentheorie.',
  ],
};
