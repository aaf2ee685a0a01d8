import type { studyPaper as english } from '../en/study-paper';

/** Words for typing in a study that was timed on paper. */
export const studyPaper: typeof english = {
  title: 'Studie vom Papier eintippen',
  intro:
    'Zyklus für Zyklus, Abschnitt für Abschnitt, wie es auf dem Bogen steht. Das Verfahren muss in der Werkstatt angelegt sein.',
  noMethod: 'Noch hat kein Teil ein Verfahren. Zuerst eines unter „Neue Studie“ anlegen.',
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
  missing: 'Ein Teil wählen und der Studie einen Namen geben.',
  cycle: (cycle) => `Zyklus ${cycle}`,
  value: 'Zeit',
  rating: 'Leistungsgrad',
  missed: 'Nicht gesehen',
  because: 'Ausgeschlossen wegen',
  none: 'Wird verwendet',
  next: 'Weiter',
  nextIs: (element) => `dann ${element}`,
  back: 'Eins zurück',
  erase: 'Letzte Ziffer löschen',
  keep: 'Studie übernehmen',
  stop: 'Zurück',
  faults: {
    nothing: () => 'Noch nichts eingetippt.',
    'watch-backwards': (element, cycle) =>
      `${element}, Zyklus ${cycle}: die Uhr zeigt weniger als am Messpunkt davor.`,
    'machine-rated': (element, cycle) =>
      `${element}, Zyklus ${cycle}: eine Maschine wird nie beurteilt; ihr Leistungsgrad ist 100.`,
  },
  source: 'vom Papier eingetippt',
  notNumber: 'Eine Zeit ist eine Zahl, zum Beispiel 0,45.',
};
