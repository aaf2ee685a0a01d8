import type { leftOpen as english } from '../en/left-open';

/** Words about a turn that was left open. */
export const leftOpen: typeof english = {
  leftTitle: (person, day, time) =>
    `Der Einsatz von ${person} ist noch offen. Zuletzt getippt: ${day}, ${time}.`,
  leftText: 'Geht er weiter, oder war er da zu Ende?',
  leftGoOn: 'Er geht weiter',
  leftEnd: 'Beenden',
  leftNote: 'Wird er jetzt beendet, steht die Zeit seitdem für sich als ungeklärt und zählt für kein Teil.',
};
