import type { ledger as english } from '../en/ledger';

/** Names of the categories of the time ledger, on every screen. */
export const ledger: typeof english = {
  title: 'En qué se fue el tiempo',
  pictureTitle: 'Tiempo transcurrido por categoría',
  piece: (name, time) => `${name} ${time}`,
  elapsed: 'Transcurrido',
  dropped: (time) => `De ello, ${time} son de la pieza en curso al terminar el periodo: no se cuenta.`,
  names: {
    cycle: 'Trabajo en piezas',
    'set-up': 'Preparación',
    stoppage: 'Paradas',
    rework: 'Retrabajo',
    'planned-break': 'Pausas previstas',
    'called-away': 'Llamado a otra tarea',
    unaccounted: 'Sin justificar',
  },
};
