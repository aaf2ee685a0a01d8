import type { studyData as english } from '../en/study-data';

/** Words of standard data: an element's time for parts of any size. */
export const studyData: typeof english = {
  title: 'Datos tipo',
  none: 'Todavía no se ha leído ningún elemento en piezas de varios tamaños. Indicar en el método con qué crece un elemento, dar el tamaño de cada pieza y estudiar piezas de cuatro tamaños o más.',
  element: 'Elemento y con qué crece',
  pair: (element, driver) => `${element}, según ${driver}`,
  formula: (a, b, unit, driver) => `NT = ${a} ${b} · ${driver}, en ${unit}`,
  constant: 'Constante a',
  slope: 'Por cada unidad de tamaño, b',
  spread: 'Dispersión en torno a la recta, s',
  fit: 'R²',
  range: 'Tamaños estudiados',
  rangeIs: (low, high, sizes, n) =>
    `de ${low} a ${high}: ${sizes} ${sizes === 1 ? 'tamaño' : 'tamaños'}, ${n} ${n === 1 ? 'lectura' : 'lecturas'}`,
  lack: 'Falta de ajuste F',
  lackIs: (f, p) => `${f}, probabilidad ${p}`,
  tiny: 'menos de 0,01',
  plusMinus: (value, half) => `${value} ± ${half}`,
  warnings: {
    'few-sizes': 'Menos de cuatro tamaños: dos puntos dan cualquier recta.',
    'few-readings': 'Un tamaño tiene menos de cuatro lecturas.',
    bends: 'Las lecturas se curvan y se apartan de una recta: otro factor, o dos tramos.',
    'negative-constant':
      'La constante está por debajo de cero: por debajo de los tamaños estudiados la recta es falsa.',
    'one-size-decides': 'Un solo tamaño sostiene la recta: estudiar tamaños intermedios.',
    constant: 'No se aprecia crecimiento, y ninguno que importe: el elemento es igual en todos los tamaños.',
  },
  ask: (element) => `Solo ${element}, para un tamaño`,
  whole: 'La pieza entera',
  wholeMissing: (elements) => `No se conoce: ninguna lectura lo dice de ${elements}.`,
  wholeNote: 'NT por pieza: según el tamaño con el que cada uno crece, si no su media.',
  parts: 'Piezas de la oferta',
  mean: (time, half) => `${time}, ± ${half} como media`,
  each: (parts, half) =>
    parts === 1 ? `una sola pieza ± ${half}` : `el promedio de ${parts} piezas ± ${half}`,
  outside: (side) =>
    `Este tamaño está muy por ${side === 'below' ? 'debajo' : 'encima'} de los estudiados. Ahí la recta no dice nada: estudiar una pieza de este tamaño.`,
  justOutside: 'Este tamaño está justo fuera de los estudiados.',
  sizeFault: 'Dar un tamaño mayor que 0 y un número entero de piezas.',
  picture: (element) => `Lecturas de ${element} según el tamaño, con la recta ajustada`,
  source:
    'Mínimos cuadrados; intervalos al 95 %: Montgomery, Peck and Vining, Introduction to Linear Regression Analysis, capítulo 2. Falta de ajuste: Draper and Smith, Applied Regression Analysis, sección 2.1.',
  hold: 'Vale solo para estas condiciones y este método.',
};
