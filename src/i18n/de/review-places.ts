import type { reviewPlaces as english } from '../en/review-places';

/** The places of Review, and what is said while its days are read. */
export const reviewPlaces: typeof english = {
  title: 'Was soll beantwortet werden?',
  names: {
    day: 'Der Tag',
    weeks: 'Die Wochen',
    'before-after': 'Vorher und nachher',
    promises: 'Zusagen',
  },
  making: (done, of) => `Tage werden summiert: ${done} von ${of}`,
  readFrom: (day) => `Gelesen ab ${day}. Es gibt ältere Tage; sie stecken hier in keiner Zahl.`,
  older: (weeks) => {
    if (weeks < 52) return 'Ein Vierteljahr lesen';
    return weeks === 52 ? 'Ein Jahr lesen' : `${weeks / 52} Jahre lesen`;
  },
  paper: {
    demo: 'Beispielwerkstatt: erfundene Einträge.',
    printed: (day, time) => `Gedruckt am ${day}, ${time}.`,
    records: (day) => `Einträge bis ${day}.`,
    targets: 'Jedes Teil wird an der Zielzeit gemessen, die es hatte, als es gefertigt wurde.',
    notForPay: 'Zum Planen und Verbessern der Arbeit: kein Lohnnachweis, kein Maßstab für eine Person.',
    remarks: 'Bemerkungen',
    toDo: 'Zu erledigen',
    signed: 'Unterschrift',
  },
};
