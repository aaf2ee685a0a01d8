import type { firstSteps as english } from '../en/first-steps';

/** Words of the first minutes: putting the app on the tablet, and a way through the demo shop. */
export const firstSteps: typeof english = {
  install: {
    title: 'Auf diesem Tablet installieren',
    why: 'Sie öffnet sich dann wie eine App, auch ohne Netz, und der Browser behält ihre Einträge sicherer als die eines Tabs.',
    menu: 'Im Menü des Browsers: „App installieren“ oder „Zum Startbildschirm hinzufügen“. Wo beides fehlt, geht es im Tab.',
    go: 'Installieren',
  },
  guide: {
    title: 'Drei Personen, drei Fragen',
    open: 'Die drei Fragen',
    away: 'Weglegen',
    here: 'Hier ansehen:',
    who: {
      pace: 'Person am Platz',
      study: 'Arbeitsstudien',
      cell: 'Arbeitsstudien',
      review: 'Schichtleitung',
    },
    look: {
      pace: 'K7 und M wählen, Start antippen, dann für jedes Teil einmal die große Fläche. Es zeigt: voraus oder im Verzug.',
      study:
        'eine Studie öffnen. Ihr Bogen endet mit der Vorgabezeit; jede Zahl zeigt beim Antippen, wie sie zustande kam.',
      cell: 'M wählen: Die Hände bestimmen, unter „Was wäre, wenn“ bringt eine schnellere Maschine nichts. Dann V wählen.',
      review:
        'Freitag, 27. März, gab es 283 Teile, Dienstag, 24. März, 231, bei schwererem Teilemix. Der Zeitgrad war fast gleich.',
    },
  },
};
