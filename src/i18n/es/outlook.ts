import type { outlook as english } from '../en/outlook';
import { formatNumber } from '../format-number';

const parts = (count: number) => `${count} ${count === 1 ? 'pieza' : 'piezas'}`;

/** Words of where a turn is heading, and of the parts that are wanted in it. */
export const outlook: typeof english = {
  finish: (about, from, to) =>
    from === to ? `Listo a las ${about}` : `Listo hacia las ${about}, de ${from} a ${to}`,
  byEnd: (time, from, to) =>
    from === to ? `${parts(from)} para las ${time}` : `${from} a ${parts(to)} para las ${time}`,
  byEndOf: (time, from, to, wanted) =>
    `${from === to ? from : `${from} a ${to}`} de ${wanted} para las ${time}`,
  allDone: (wanted) => (wanted === 1 ? '1 de 1 terminada' : `Las ${wanted} terminadas`),
  notYet: 'Final: se calcula desde 5 piezas',
  ask: '¿Cuántas piezas hacen falta?',
  learning: 'Aprendizaje: no se calcula el final',
  states: { steady: 'Últimas 5: en tiempo', slower: 'Últimas 5: pasan del objetivo' },
  lastParts: (count) => (count === 1 ? 'La última pieza' : `Las últimas ${count} piezas`),

  planTitle: 'Piezas necesarias en este periodo',
  wanted: 'Piezas buenas',
  set: 'Fijar',
  none: 'Sin número',
  fault: 'Un número entero de 1 a 2000, por favor.',
  soFar: (good) => `Hasta ahora, ${parts(good)} ${good === 1 ? 'buena' : 'buenas'}.`,
  howTitle: 'Cómo se calcula',
  howRange: (count, turns) =>
    `200 ensayos con ${count === 1 ? 'la última pieza' : `las últimas ${count} piezas`} de este periodo${turns > 0 ? `, y con lo que ${turns === 1 ? 'perdió el periodo anterior y cómo cambió' : `perdieron los ${turns} periodos anteriores y cómo cambiaron`}` : ''}. El margen es donde acaban 8 de cada 10 ensayos. No se cuentan las pausas previstas del calendario.`,
  paceRatio: (ratio) =>
    `Las últimas piezas tardaron ${formatNumber(ratio, 2)} veces sus objetivos: todo su tiempo entre todos sus objetivos.`,
  target: (what) => `Objetivo: ${what}.`,
  sources: { typed: 'escrito', standard: 'el tiempo estándar', takt: 'takt, según calendario y demanda' },
};
