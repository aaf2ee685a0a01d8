import type { cellLeadTime as english } from '../en/cell-lead-time';

/** Words of the page on lots and lead time. */
export const cellLeadTime: typeof english = {
  taps: 'Lose an der Zelle',
  arrived: (parts) => `${parts} angekommen`,
  released: (parts) => `${parts} frei für den nächsten Arbeitsgang`,
  parts: (count) => `${count} ${count === 1 ? 'Teil' : 'Teile'}`,
  partsArrive: 'Teile in einem ankommenden Los',
  partsLeave: 'Teile in einem abgehenden Los',
  otherLots: 'Andere Lose: Größen, Nummern, ein Scan',
  scan: 'Losnummer tippen oder scannen, dann Eingabetaste',
  scanHint: 'Eine Nummer, die nicht in der Zelle ist, kommt an; eine, die darin ist, geht ab.',
  undo: 'Rückgängig',
  tookArrived: (parts) => `Aufgezeichnet: ${parts} angekommen.`,
  tookFree: (parts) => `Aufgezeichnet: ${parts} frei.`,
  tookUnseen: (parts, unseen) =>
    `Aufgezeichnet: ${parts} frei. Bei ${unseen} davon hat niemand die Ankunft gesehen, dafür gibt es keine Durchlaufzeit.`,
  tookLot: {
    arrived: (lot) => `Aufgezeichnet: ${lot} angekommen.`,
    released: (lot) => `Aufgezeichnet: ${lot} ist frei.`,
  },
  tookBack: 'Zurückgenommen.',
  failed: (problem) => `Nicht aufgezeichnet: ${problem}`,
  nothing: 'Nach diesen Einträgen ist nichts in der Zelle.',
  inside: 'Jetzt in der Zelle',
  partsName: 'Teile',
  insideOf: (parts, count) => (count === 1 ? `${parts} in einem Los` : `${parts} in ${count} Losen`),
  lot: 'Los',
  unnamed: 'ohne Nummer',
  came: 'angekommen',
  unseen: (parts) =>
    `Abgegangen, ohne dass jemand die Ankunft sah: ${parts}; dafür gibt es hier keine Durchlaufzeit.`,
  title: (half, high) =>
    `Die Hälfte der Teile war innerhalb von ${half} frei, neun von zehn innerhalb von ${high}.`,
  titleFew: (parts, mean) => `Bisher ${parts}, im Mittel ${mean} in der Zelle.`,
  none: 'Noch kein Los ist abgegangen: antippen, wenn eines ankommt und wenn es frei ist.',
  noTurns:
    'Nach der Wanduhr: um diese Lose herum ist kein Einsatz aufgezeichnet, daher weiß niemand, wann die Zelle arbeitete.',
  overnight: (parts, others) =>
    `Dazu ${parts} in der Zelle, während niemand arbeitete, etwa über Nacht; nicht enthalten in diesen ${others}.`,
  clocks: { working: 'Arbeitszeit', wall: 'Wanduhr' },
  clock: 'Alle Teile, gezählt nach',
  chart: 'Durchlaufzeiten der Teile, Minuten',
  figures: {
    n: 'Teile',
    median: 'Hälfte bis',
    p80: '8 von 10',
    p90: '9 von 10',
    longest: 'längste',
    mean: 'Mittelwert',
  },
  little: (inside, by) =>
    `Probe: im Mittel ${inside} Teile in der Zelle durch Zählen, ${by} aus Rate × Durchlaufzeit (Gesetz von Little).`,
  littleOff:
    'Beides weicht um mehr als 1 % voneinander ab: manche Lose sind bei Ankunft oder Abgang nicht aufgezeichnet, oder viele sind noch in der Zelle.',
  pce: (share, total, minutes, elements) =>
    `Wertschöpfend sind ${share} dieser ${total}: ${minutes}, durch ${elements}.`,
  pceWrong: 'Die wertschöpfende Arbeit dauert länger als die Durchlaufzeit, daher steht hier kein Anteil.',
  pceNone:
    'Unten angeben, welche Abschnitte wertschöpfend sind; dann steht hier ihr Anteil an der Durchlaufzeit.',
  stack: 'Wo die Durchlaufzeit eines Teils bleibt, nach Losgrößen',
  stackSays: {
    arrivalLot: (part, total, share) =>
      `${part}: ${total}, davon ${share} Warten auf die Teile des eigenen Loses: hier helfen kleinere Lose, keine schnellere Zelle.`,
    flow: (part, total, share) =>
      `${part}: ${total}, davon ${share} die Arbeit selbst: hier lohnt sich eine schnellere Zelle.`,
    trolley: (part, total, share) =>
      `${part}: ${total}, davon ${share} Warten, bis der Wagen voll ist: hier helfen kleinere Wagen.`,
  },
  terms: { arrivalLot: 'Ankunftslos', flow: 'Durchlauf', trolley: 'Wagen' },
  lotTakes: (lot, minutes) =>
    `Ein Los über ${lot} dauert hier ${minutes}, mit Stillständen und gelegentlicher Arbeit.`,
  lotTitle: 'Allein nach den Zeiten der Studie: losweise oder Stück für Stück',
  lotSize: 'Teile im Los',
  ways: {
    batch: 'losweise, eine Person',
    cell: 'Stück für Stück, diese Zelle',
    line: 'Stück für Stück, ein Platz je Abschnitt',
  },
  lotRows: {
    first: 'erstes Teil heraus, min',
    last: 'letztes Teil heraus, min',
    late: '9 von 10 Losen heraus in, min',
    inside: 'Teile begonnen, nicht fertig',
    faulty: 'schlimmstenfalls fehlerhaft, bis es auffällt',
  },
  settings: 'Wie die Zelle versorgt, geleert und aufgehalten wird',
  valueAdding: 'Diese Abschnitte sind wertschöpfend',
  putDown: 'Das Teil ist aus der Hand nach',
  lastOfAll: 'dem letzten Abschnitt des Zyklus',
  byOther: 'Diese Abschnitte macht eine andere Person (etwa Prüfen)',
  holding: 'Bei diesen Gründen steht die Maschine; bei jedem anderen setzt die Person aus',
  set: 'Für die Zelle sichern',
  how: [
    'Durchlaufzeit: von der Ankunft an der Zelle, bis das Teil für den nächsten Arbeitsgang frei ist. Ein fertiges Teil, das auf den Wagen wartet, ist noch in der Zelle.',
    'Arbeitszeit ist, wenn Einsätze liefen, ohne deren geplante Pausen.',
    'Ohne Nummer geht zuerst ab, was zuerst kam.',
    'Nach der Wanduhr wird ein Teil gesondert genannt, das in der Zelle war, während länger als vier Stunden niemand arbeitete. Unter zehn Teilen gibt es keine Anteile.',
    'Der Balken ist die mittlere Durchlaufzeit der Simulation auf den anderen Seiten, geteilt dort, wo ein Teil begonnen und wo es abgelegt wird. Als Formel: c·(r + (Q − 1)/2) + F + c·(q − 1)/2, mit c Abstand zwischen den Teilen, Q Ankunftslos, r Restbestand bei dessen Ankunft, q Wagen, F eigener Weg des Teils.',
    'Ein Los braucht den Weg seines ersten Teils und für jedes weitere einen Abstand, wie simuliert.',
    'Gesetz von Little: Teile in der Zelle = Rate × Durchlaufzeit; exakt über jede Zeit, die leer beginnt und leer endet.',
    'Wertschöpfender Anteil: nur Arbeit an diesem Teil, nie, was daneben geschieht; er kann also 100 % nicht übersteigen.',
    'Los: losweise Q·Σt; Stück für Stück Σt + (Q − 1)·Zyklus; mit einem Platz je Abschnitt Σt + (Q − 1)·längster. Eine falsche Einstellung zeigt sich, wenn ein Teil fertig ist.',
  ],
};
