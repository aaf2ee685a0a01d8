import type { learning as english } from '../en/learning';

/** Words about people who are new to a job. */
export const learning: typeof english = {
  title: 'Aprendizaje',
  note: 'Mientras alguien aprende, sus piezas cuentan como terminadas, no entran en ninguna media y no muestran posición.',
  line: (code, count) => `${code}: ${count === 1 ? 'la primera pieza' : `las primeras ${count} piezas`}`,
  end: 'Terminar',
  endOf: (code) => `Terminar el aprendizaje de ${code}`,
  who: '¿Quién aprende?',
  howMany: '¿Para cuántas piezas?',
  set: 'Marcar aprendizaje',
  choose: 'Elegir quién y para cuántas piezas. No se ha cambiado nada.',
};
