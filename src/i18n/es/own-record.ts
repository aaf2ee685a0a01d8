import type { ownRecord as english } from '../en/own-record';
import { formatNumber } from '../format-number';

/** Words of the operator's own record, read when a turn has ended. */
export const ownRecord: typeof english = {
  ownTitle: 'El registro propio',
  ownWhen: (person, day, from, to) => `${person} · ${day}, de ${from} a ${to}`,
  ownNote: 'Quien trabajó lo ve primero. Es para mejorar y planificar, no para salarios ni sanciones.',
  paceLabel: 'Sin paradas',
  startAnother: 'Empezar otro periodo',
  whose: '¿El registro de quién?',
  shared: (count) =>
    count === 1
      ? 'Una pieza se hizo entre dos y no está en las cifras propias de nadie.'
      : `${count} piezas se hicieron entre dos y no están en las cifras propias de nadie.`,
  byPart: 'Piezas',
  noParts: 'En este periodo no se terminó ninguna pieza.',
  column: {
    part: 'Pieza',
    n: 'Terminadas',
    mean: 'Media',
    target: 'Objetivo',
    good: 'Buenas a la primera',
    rework: 'Retrabajo',
    scrap: 'Desecho',
    what: 'Tiempo',
    duration: 'min:s',
    share: 'Proporción',
    when: 'A las',
    why: 'Por qué',
    element: 'Elemento',
  },
  targetChanged: 'el último de varios',
  netNote: 'Las medias no incluyen paradas.',
  leftOut: (reasons) => `No entran en ellas: ${reasons}.`,
  leftOutFor: {
    asked: 'con una pregunta abierta',
    'no-time-left': 'solo paradas o huecos',
    interrupted: 'con una parada',
    'first-off': 'primera pieza',
    'set-aside': 'apartada',
    learning: 'de aprendizaje',
  },
  reworkOf: (marked, waiting) =>
    `Para retrabajo: ${marked}. Retrabajadas según los toques: ${marked - waiting}. Aún esperan: ${waiting}.`,
  countedOf: (counted) => `(${counted === 1 ? 'cuenta' : 'cuentan'} ${counted})`,
  share: (part) => `${formatNumber(part * 100)} %`,
  stoppagesTitle: 'Paradas',
  noStoppages: 'No se paró el trabajo.',
  noteTitle: '¿Algo que decir de este periodo?',
  noteHint: 'Quien mire el día lo lee junto a las cifras.',
  noteKept: 'Guardado con el registro propio.',
  noteKeep: 'Guardar',
  putRight: 'corregido',
  sayWhyShort: 'Indicar motivo',
  change: 'Cambiar',
  elementsTitle: 'Elementos',
  daysTitle: 'Para llevarse',
  takeDays: (person) => `Los últimos 90 días de ${person} en un archivo`,
  daysNote: 'Cada pieza con su tiempo y el objetivo que tenía. El archivo es de la persona: nadie se entera.',
  taken: (name, count) => `Guardado: ${name}, ${count} ${count === 1 ? 'pieza' : 'piezas'}.`,
  notTaken: (error) => `No se guardó nada: ${error}`,
};
