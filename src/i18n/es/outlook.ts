import type { outlook as english } from '../en/outlook';
import { formatNumber } from '../format-number';

const parts = (count: number) => `${count} ${count === 1 ? 'pieza' : 'piezas'}`;

/** Words of where a turn is heading, and of the parts that are wanted in it. */
export const outlook: typeof english = {
  finish: (about, from, to) =>
    from === to ? `Listo a las ${about}` : `Listo hacia las ${about} (${from}–${to})`,
  byEnd: (time, about, from, to) =>
    from === to
      ? `${parts(about)} para las ${time}`
      : `Unas ${parts(about)} para las ${time} (${from}–${to})`,
  byEndOf: (time, about, from, to, wanted) =>
    from === to
      ? `${about} de ${wanted} para las ${time}`
      : `Unas ${about} de ${wanted} para las ${time} (${from}–${to})`,
  allDone: (wanted) => (wanted === 1 ? '1 de 1 terminada' : `Las ${wanted} terminadas`),
  atTarget: (time) => `Al objetivo, listo: ${time}`,
  notYet: 'Aún es pronto: se calcula desde 10 piezas contadas',
  ask: '¿Cuántas piezas?',
  learning: 'Aprendizaje: no se calcula el final',
  states: {
    steady: 'Últimas 5: hasta 10 % más',
    slower: 'Últimas 5: sobre objetivo',
  },
  positionLater: 'Por delante o por detrás: desde la primera pieza',
  lastParts: (count) => (count === 1 ? 'La última pieza' : `Las últimas ${count} piezas`),

  planTitle: 'Piezas que se piden y fin del turno',
  wanted: 'Piezas buenas',
  until: 'El turno acaba a las',
  left: (left, wanted) => `faltan ${left} de ${wanted}`,
  set: 'Fijar',
  none: 'Sin número',
  fault: 'Un número entero de 1 a 2000 o una hora, por favor.',
  soFar: (good) => `Buenas hasta ahora: ${good}, de todas las personas y piezas.`,
  howTitle: 'Cómo se calcula',
  howRange: (count, turns) =>
    `200 ensayos con las últimas piezas contadas (${count}) de este periodo y lo que se perdió en él${turns > 0 ? `, o con pérdidas y cambios de periodos anteriores (${turns}) del mismo orden` : ''}. El margen es donde acaban 8 de cada 10 ensayos. No se cuentan las pausas previstas.`,
  paceRatio: (count, ratio) =>
    `Piezas contadas, las últimas ${count}: ${formatNumber(ratio, 2)} veces sus objetivos, todo el tiempo entre todos los objetivos.`,
  undisturbed: (count) =>
    `Sin perder más tiempo, con su tiempo medio: ${count} ${count === 1 ? 'pieza' : 'piezas'} al final.`,
  state: 'Últimas 5: sobre objetivo desde una mediana del 110 %, hasta que baja al 105 %.',
  picture:
    'El dibujo: las últimas 20 piezas en orden, cada una frente a su objetivo, la línea de trazos. Hueca: sin contar. Triángulo: fuera del dibujo.',
  scrap: 'Una pieza de desecho lleva su tiempo y no gana objetivo.',
  plan: '«Con paradas» carga también paradas, preparación, retrabajo y llamadas a otra tarea, las cause quien las cause.',
  target: (what) => `Objetivo: ${what}.`,
  sources: { typed: 'escrito', standard: 'el tiempo estándar', takt: 'takt, según calendario y demanda' },
};
