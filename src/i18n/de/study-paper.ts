import type { studyPaper as english } from '../en/study-paper';

/** Words for typing in a study that was timed on paper. */
export const studyPaper: typeof english = {
  title: 'Studie vom Papier eintippen',
  intro:
    'Zyklus für Zyklus, Abschnitt für Abschnitt, wie es auf dem Bogen steht. Das Teil braucht ein Verfahren.',
  noMethod: 'Noch hat kein Teil ein Verfahren. Zuerst eines anlegen.',
  writeMethod: 'Verfahren anlegen',
  name: 'Name der Studie',
  day: 'Tag',
  unit: 'Zeiten auf dem Bogen',
  reads: 'Es sind',
  readings: {
    own: 'Einzelzeiten der Abschnitte',
    watch: 'Fortschrittszeiten',
    cycle: 'Fortschrittszeiten, je Zyklus ab null',
  },
  begin: 'Eintippen',
  missing: 'Ein Teil wählen und der Studie einen Namen und ihren Tag geben.',
  cycle: (cycle) => `Zyklus ${cycle}`,
  value: 'Zeit',
  rating: 'Leistungsgrad',
  missed: 'Nicht gesehen',
  because: 'Ausgeschlossen wegen',
  none: 'Wird verwendet',
  next: 'Weiter',
  nextIs: (element) => `dann ${element}`,
  back: 'Feld davor',
  erase: 'Letzte Ziffer löschen',
  keep: 'Studie übernehmen',
  stop: 'Zum Kopf des Bogens',
  faults: {
    nothing: () => 'Noch nichts eingetippt.',
    'watch-backwards': (element, cycle, watch, before) =>
      `${element}, Zyklus ${cycle}: ${watch} liegt vor ${before}.`,
    'machine-rated': (element, cycle) =>
      `${element}, Zyklus ${cycle}: eine Maschine wird nie beurteilt; ihr Leistungsgrad ist 100.`,
    'no-rating': (element, cycle) =>
      `${element}, Zyklus ${cycle}: ein Leistungsgrad ist eine Zahl über 0, höchstens 200.`,
  },
  questions: {
    cell: (element, cycle) => `${element} (Zyklus ${cycle})`,
    gaps: (cells) =>
      `Nichts eingetippt: ${cells}. So übernommen gelten sie als nicht gesehene Messpunkte, und ihre Zyklen sind nicht vollständig.`,
    never: (elements) => `Der Bogen hat keine Zeit für ${elements}. Die Summen lassen das weg und sagen es.`,
    rated: (cell, rating) => `${cell} mit ${rating}`,
    odd: (cells) => `Leistungsgrad außerhalb 50 bis 150: ${cells}. Steht das so auf dem Bogen?`,
    unrated: (elements) => `Kein Leistungsgrad eingetippt: ${elements}. So übernommen gilt 100.`,
    goOn: 'Weiter eintippen',
    keepSo: 'So übernehmen',
  },
  source: 'vom Papier eingetippt',
  notNumber: 'Eine Zeit ist eine Zahl, zum Beispiel 0,45.',
};
