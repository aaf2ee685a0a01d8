import type { reviewPlaces as english } from '../en/review-places';

/** The places of Review, and what is said while its days are read. */
export const reviewPlaces: typeof english = {
  title: '¿Qué se quiere saber?',
  names: {
    day: 'El día',
    weeks: 'Las semanas',
    'before-after': 'Antes y después',
    promises: 'Promesas',
  },
  making: (done, of) => `Sumando días: ${done} de ${of}`,
  readFrom: (day) => `Leído desde el ${day}. Hay días anteriores, y no entran en ninguna cifra de aquí.`,
  older: (weeks) => {
    if (weeks < 52) return 'Leer un trimestre';
    return weeks === 52 ? 'Leer un año' : `Leer ${weeks / 52} años`;
  },
  paper: {
    demo: 'Taller de ejemplo: registros inventados.',
    printed: (day, time) => `Impreso el ${day}, ${time}.`,
    records: (day) => `Registros hasta el ${day}.`,
    targets: 'Cada pieza se mide con el objetivo que llevaba cuando se hizo.',
    notForPay:
      'Para planificar y mejorar el trabajo: no es un registro de nóminas ni una medida de una persona.',
    remarks: 'Observaciones',
    toDo: 'Por hacer',
    signed: 'Firma',
  },
};
