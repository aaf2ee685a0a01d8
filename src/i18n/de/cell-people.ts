import type { cellPeople as english } from '../en/cell-people';
import { cell } from './cell';

/** Words of the page on people and machines. */
export const cellPeople: typeof english = {
  enough: (people, good, wanted) =>
    `Es reicht mit ${people}: ${good} gute Teile am Tag, gewünscht sind ${wanted}.`,
  tooFew: (people, good, wanted) =>
    `Es reicht nicht mit ${people}: ${good} gute Teile am Tag, gewünscht sind ${wanted}.`,
  wouldDo: (people) => `Mit ${people} würde es reichen, die Arbeit verteilt wie unten.`,
  close: 'Es fehlt wenig: weniger Stillstand oder ein etwas kürzerer Abschnitt würde reichen.',
  nothingLeft:
    'Stillstände und gelegentliche Arbeit verbrauchen den ganzen Takt: auch noch so viele Personen würden nicht reichen.',
  tooLong: (left, elements) =>
    `Auch noch so viele Personen würden nicht reichen. ${elements.length === 1 ? 'Allein' : 'Jeweils allein'} schon länger als die ${left}, die vom Takt bleiben: ${cell.list(elements)}.`,
  machineSlow: (minutes, left) =>
    `Eine Maschine ist zu langsam, gleich wer sie bedient: Beladen und Maschine dauern ${minutes}, vom Takt bleiben ${left}.`,
  itTakes: (machines, people) => `${machines} und ${people} würden reichen.`,
  tieSlow: (minutes, left) =>
    `Die Arbeit einer Person passt hinein, aber Handarbeit und Maschine warten abwechselnd aufeinander: ${minutes}, vom Takt bleiben ${left}.`,
  demand: 'Gewünschte Teile am Tag',
  left: (takt, left) =>
    `Takt ${takt}: Arbeitszeit des Tages durch gewünschte Teile. Davon bleiben ${left} für diese Arbeit, nach Stillständen, gelegentlicher Arbeit, Nacharbeit und Ausschuss.`,
  people: (count) => `${count} ${count === 1 ? 'Person' : 'Personen'}`,
  noTakt: 'Wie viele Personen braucht es? Angeben, wie viele Teile am Tag gewünscht sind.',
  noHands: 'An diesem Teil gibt es keine Handarbeit zu verteilen.',
  loop: (elements) =>
    `${elements} warten im Kreis aufeinander, niemand könnte anfangen. Ändern, was nach was kommt.`,
  takt: (minutes) => `bleibt vom Takt: ${minutes}`,
  person: (number) => `Person ${number}`,
  machine: 'Maschine mit Beladen',
  chart: 'Arbeit jeder Person neben dem, was vom Takt bleibt, Minuten je Teil',
  barSays: (who, minutes) => `${who}: ${minutes}.`,
  p80: '8 von 10',
  figures: {
    minimum: 'kleinste Personenzahl, rechnerisch',
    efficiencyTakt: 'Abstimmungsgrad nach Resttakt',
    delayTakt: 'Abstimmungsverlust nach Resttakt',
    efficiencyLongest: 'Abstimmungsgrad nach längstem Platz',
    delayLongest: 'Abstimmungsverlust nach längstem Platz',
  },
  order: 'Was nach was kommen muss',
  after: 'nach',
  first: 'nichts',
  oneMachine: (part, adds) =>
    `${part}: eine Maschine je Person; eine zweite bringt nur ${adds} gute Teile in der Stunde mehr.`,
  oneMachineOnly: (part) => `${part}: eine Maschine je Person; eine zweite bringt nichts, was belegt wäre.`,
  moreMachines: (part, count, adds, waits) =>
    `${part}: von ${count} Maschinen je Person bringt die letzte ${adds} gute Teile in der Stunde mehr, und jede wartet ${waits} der Zeit. Ob es sich lohnt, zeigen erst die Kosten.`,
  ideal: (ideal) => `Allein nach den Zeiten kann eine Person ${ideal} solche Maschinen bedienen.`,
  cheapest: (machines) => `Am günstigsten ist ein gutes Teil mit ${machines}.`,
  machinesCount: (count) => `${count} ${count === 1 ? 'Maschine' : 'Maschinen'}`,
  machines: {
    machines: 'Maschinen',
    perHour: 'gute Teile je Stunde',
    operator: 'Person wartet',
    machine: 'jede Maschine wartet auf die Person',
    random: 'Verlust bei Rufen zu beliebiger Zeit',
    cost: 'Kosten je gutem Teil',
  },
  machinesNote:
    'Gute Teile sind simuliert, mit Stillständen und dem Warten aufeinander. Warten und Verlust gelten allein nach den Zeiten, Beladen zählt nicht als Warten; Rufe zu beliebiger Zeit stecken nicht in den guten Teilen: hier werden die Maschinen reihum bedient.',
  operatorRate: 'Person, Kosten je Stunde',
  machineRate: 'Maschine, Kosten je Stunde',
  how: [
    'Takt = Arbeitszeit eines Tages ÷ darin gewünschte Teile. Resttakt: Arbeitszeit ohne Stillstände × Anteil ohne Ausschuss ÷ gewünschte Teile, abzüglich gelegentlicher Arbeit und Nacharbeit je Teil.',
    'Gute Teile am Tag sind die der Simulation auf den anderen Seiten.',
    'Die Arbeit wird Abschnitt für Abschnitt vergeben, solange sie in den Resttakt passt: zuerst der Abschnitt, auf den die meisten anderen warten, und einmal nach der meisten Arbeit dahinter; gezeigt wird das Bessere von beiden. Keines findet immer das Beste (Jacobs & Chase; Helgeson und Birnie 1961).',
    'Abstimmungsgrad = alle Handarbeit ÷ (Personen × Resttakt) oder ÷ (Personen × längster Platz). Abstimmungsverlust = der Rest. Beide sind gebräuchlich.',
    'Die Marke „8 von 10“: in acht von zehn aufgenommenen Zyklen war diese Person bis dahin fertig.',
    'Maschinen reihum: die Runde dauert das Längere aus Beladen + Maschine und Maschinenzahl × Eigenzeit der Person; n′ = (Beladen + Maschine) ÷ (Beladen + Arbeit daneben) (Niebel & Freivalds).',
    'Rufe zu beliebiger Zeit: binomial, jede Maschine braucht die Person in Beladen ÷ (Beladen + Maschine) der Zeit.',
  ],
};
