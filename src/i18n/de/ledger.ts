import type { ledger as english } from '../en/ledger';

/** Names of the categories of the time ledger, on every screen. */
export const ledger: typeof english = {
  title: 'Wo die Zeit geblieben ist',
  pictureTitle: 'Verstrichene Zeit nach Zeitart',
  piece: (name, time) => `${name} ${time}`,
  elapsed: 'Verstrichen',
  dropped: (time) =>
    `Davon ${time} am Teil, das beim Ende des Einsatzes angefangen war: es ist nicht gezählt.`,
  names: {
    cycle: 'Arbeit an Teilen',
    'set-up': 'Rüsten',
    stoppage: 'Stillstände',
    rework: 'Nacharbeit',
    'planned-break': 'Geplante Pausen',
    'called-away': 'Weggerufen',
    unaccounted: 'Ungeklärt',
  },
};
