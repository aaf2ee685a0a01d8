import { spoken } from '../spoken';
/** Names of the categories of the time ledger, on every screen. */
export const ledger = spoken('ledger', {
  title: 'Where the time went',
  pictureTitle: 'Elapsed time by category',
  piece: (name: string, time: string) => `${name} ${time}`,
  elapsed: 'Elapsed',
  names: {
    cycle: 'Work on parts',
    'set-up': 'Set-up',
    stoppage: 'Stoppages',
    rework: 'Rework',
    'planned-break': 'Planned breaks',
    'called-away': 'Called away',
    unaccounted: 'Not accounted for',
  },
});
