import type { studyPaper as english } from '../en/study-paper';

/** Words for typing in a study that was timed on paper. */
export const studyPaper: typeof english = {
  title: 'Pasar un estudio en papel',
  intro:
    'Ciclo por ciclo, elemento por elemento, como está en la hoja. El método tiene que estar registrado en el taller.',
  noMethod: 'Ninguna pieza tiene método todavía. Escribir antes uno en «Nuevo estudio».',
  name: 'Nombre del estudio',
  day: 'Día',
  unit: 'Tiempos de la hoja',
  reads: 'Son',
  readings: {
    own: 'tiempos propios de los elementos',
    watch: 'tiempos acumulados',
    cycle: 'tiempos acumulados, desde cero en cada ciclo',
  },
  begin: 'Empezar',
  missing: 'Elegir una pieza y dar un nombre al estudio.',
  cycle: (cycle) => `Ciclo ${cycle}`,
  value: 'Tiempo',
  rating: 'Valoración',
  missed: 'No visto',
  because: 'Excluida por',
  none: 'Se usa',
  next: 'Siguiente',
  nextIs: (element) => `luego ${element}`,
  back: 'Uno atrás',
  erase: 'Borrar la última cifra',
  keep: 'Guardar este estudio',
  stop: 'Volver',
  faults: {
    nothing: () => 'Aún no se ha escrito nada.',
    'watch-backwards': (element, cycle) =>
      `${element}, ciclo ${cycle}: el cronómetro marca menos que en el punto de corte anterior.`,
    'machine-rated': (element, cycle) =>
      `${element}, ciclo ${cycle}: una máquina no se valora nunca; su valoración es 100.`,
  },
  source: 'pasado del papel',
  notNumber: 'Un tiempo es un número, como 0,45.',
};
