import type { studyPaper as english } from '../en/study-paper';

/** Words for typing in a study that was timed on paper. */
export const studyPaper: typeof english = {
  title: 'Pasar un estudio en papel',
  intro: 'Ciclo por ciclo, elemento por elemento, como está en la hoja. La pieza necesita un método.',
  noMethod: 'Ninguna pieza tiene método todavía. Escribir antes uno.',
  writeMethod: 'Escribir un método',
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
  missing: 'Elegir una pieza y dar al estudio un nombre y su día.',
  cycle: (cycle) => `Ciclo ${cycle}`,
  value: 'Tiempo',
  rating: 'Valoración',
  missed: 'No visto',
  because: 'Excluida por',
  none: 'Se usa',
  next: 'Siguiente',
  nextIs: (element) => `luego ${element}`,
  back: 'Casilla anterior',
  erase: 'Borrar la última cifra',
  keep: 'Guardar este estudio',
  stop: 'Al encabezado de la hoja',
  faults: {
    nothing: () => 'Aún no se ha escrito nada.',
    'watch-backwards': (element, cycle, watch, before) =>
      `${element}, ciclo ${cycle}: ${watch} es antes que ${before}.`,
    'machine-rated': (element, cycle) =>
      `${element}, ciclo ${cycle}: una máquina no se valora nunca; su valoración es 100.`,
    'no-rating': (element, cycle) =>
      `${element}, ciclo ${cycle}: una valoración es un número mayor que 0, como máximo 200.`,
  },
  questions: {
    cell: (element, cycle) => `${element} (ciclo ${cycle})`,
    gaps: (cells) =>
      `No se ha escrito nada para ${cells}. Guardado así cuentan como puntos de corte no vistos, y sus ciclos no están completos.`,
    never: (elements) => `La hoja no tiene tiempo de ${elements}. Las sumas lo dejan fuera y lo dicen.`,
    rated: (cell, rating) => `${cell} con ${rating}`,
    odd: (cells) => `Valoración fuera de 50 a 150: ${cells}. ¿Es lo que dice la hoja?`,
    unrated: (elements) => `No se ha escrito valoración para ${elements}. Guardado así cuenta como 100.`,
    goOn: 'Seguir escribiendo',
    keepSo: 'Guardar tal como está',
  },
  source: 'pasado del papel',
  notNumber: 'Un tiempo es un número, como 0,45.',
};
