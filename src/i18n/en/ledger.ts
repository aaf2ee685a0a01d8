import { spoken } from '../spoken';
/** Names of the categories of the time ledger, on every screen. */
export const ledger = spoken('ledger', {
  title: 'Where the time went',
  pictureTitle: 'Elapsed time by category',
  piece: (name: string, time: string) => `${name} ${time}`,
  elapsed: 'Elapsed',
  dropped: (time: string) =>
    `Of it ${time} is the part that was in hand when the turn ended: it is not counted.`,
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
