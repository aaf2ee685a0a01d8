import type { enterTurn as english } from '../en/enter-turn';
import { formatNumber } from '../format-number';

const parts = (count: number) => `${count} ${count === 1 ? 'Teil' : 'Teile'}`;
/** As it stands after "von". */
const ofParts = (count: number) => `${count} ${count === 1 ? 'Teil' : 'Teilen'}`;
const were = (count: number) => (count === 1 ? 'wurde' : 'wurden');

/** Words of a turn that is written down afterwards, and of how far a day's taps can be trusted. */
export const enterTurn: typeof english = {
  title: 'Einsatz nachtragen, den niemand angetippt hat',
  open: 'Einsatz nachtragen',
  note: 'Seine Teile und seine Zeit zählen. Die Zeit eines einzelnen Teils ist nicht bekannt; darum geht keine in einen Mittelwert oder eine Studie ein.',
  person: 'Wessen Einsatz?',
  day: 'Tag',
  from: 'Von',
  to: 'Bis',
  part: (place) => `Teil ${place}`,
  done: (place) => `Fertig, Teil ${place}`,
  rework: (place) => `davon nachgearbeitet, Teil ${place}`,
  scrap: (place) => `davon Ausschuss, Teil ${place}`,
  short: { part: 'Teil', done: 'Fertig', rework: 'Nachgearbeitet', scrap: 'Ausschuss' },
  addPart: 'Weiteres Teil',
  stopped: (reason) => `Minuten Stillstand: ${reason}`,
  stoppedTitle: 'Minuten Stillstand, soweit bekannt',
  enter: 'Nachtragen',
  next: 'Weiter',
  cancel: 'Abbrechen',
  choosePart: 'Auswählen',
  willWrite: 'Das wird eingetragen:',
  span: (person, day, from, to, length) => `${person}, ${day}, ${from} bis ${to}: ${length}`,
  made: (part, done, rework, scrap) =>
    `${done} × ${part}${rework > 0 ? `, davon ${rework} nachgearbeitet` : ''}${scrap > 0 ? `, davon ${scrap} Ausschuss` : ''}`,
  stoppedFor: (reason, minutes) => `${reason}: ${minutes} min`,
  noStops: 'Keine Stillstände angegeben: was verloren ging, ist nicht bekannt.',
  entered: (day) => `Der Einsatz ist am ${day} eingetragen und als nachgetragen gekennzeichnet.`,
  meals: (minutes) => `${minutes} min Essenspause nach Kalender abgezogen.`,
  doneNote: 'Fertig sind alle: auch die nachgearbeiteten und der Ausschuss.',
  beside: (from, to) =>
    `Von ${from} bis ${to} ist schon ein anderer Einsatz aufgezeichnet. Fortfahren, wenn dieser daneben lief.`,
  faults: {
    inTheWay: (code, from, to) =>
      `${code} hat schon einen Einsatz von ${from} bis ${to}, und niemand ist in zweien zugleich. Nichts wurde geändert.`,
    person: 'Ein Kürzel fehlt. Nichts wurde geändert.',
    times:
      'Der Tag und beide Zeiten sind nötig; der Einsatz muss vorbei sein und darf höchstens einen Tag dauern. Nichts wurde geändert.',
    whichPart: 'Von welchem Teil ist die Zahl? Nichts wurde geändert.',
    parts:
      'Mindestens ein Teil, in ganzen Zahlen; Nacharbeit und Ausschuss zusammen nicht mehr als fertige Teile. Nichts wurde geändert.',
    stops:
      'Minuten Stillstand sind ganze Zahlen und zusammen nicht mehr, als der Einsatz lang ist. Nichts wurde geändert.',
  },

  trust: 'Wie weit das Tippen reicht',
  capture: (tapped, counted, share) =>
    `${parts(tapped)} angetippt von ${counted} von Hand gezählten: ${formatNumber(share * 100)} %.`,
  partial: 'Unvollständig: die Mittelwerte gelten nur für einen Teil der Arbeit.',
  enteredShare: (entered, done) =>
    `${entered} von ${ofParts(done)} ${were(entered)} nachgetragen und ${entered === 1 ? 'steht' : 'stehen'} in keinem Mittelwert.`,
  learning: (count) => `${parts(count)} beim Anlernen gefertigt und in keinem Mittelwert.`,
  shared: (count) => `${parts(count)} zu zweit gefertigt und in niemandes eigenen Zahlen.`,
};
