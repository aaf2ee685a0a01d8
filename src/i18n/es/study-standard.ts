import type { studyStandard as english } from '../en/study-standard';
import { formatNumber } from '../format-number';

/** Words of the analysis of studies, of standards, and of standard data. */
export const studyStandard: typeof english = {
  title: (part) => `Estándar de ${part}`,
  back: 'Todos los estudios',
  reading: 'Leyendo los estudios …',
  failed: 'No se pudieron leer los estudios. No se han borrado.',
  noPart: 'Esta pieza no está en el taller.',
  noStudies: 'Aún no hay ningún estudio terminado de esta pieza.',
  studies: 'Análisis de los estudios',
  obstacles: {
    clock: 'falló el control del reloj',
    trend: 'el trabajo no fue estable',
    unseen: 'un elemento no se vio nunca',
  },
  otherRevision: (timed, used) => `cronometró la revisión ${timed} del método, en uso está la ${used}`,
  beside: (revision) => `no está en la revisión ${revision} del estándar`,
  element: 'Elemento',
  together: 'En conjunto',
  perUnit: (unit) => `NT por pieza, ${unit}, y n`,
  normal: 'Tiempo normal NT',
  standard: 'Tiempo estándar ST',
  mixed: 'No se juntan dos revisiones del método: marcar los estudios de una sola.',
  chooseOne: 'Ningún estudio está marcado: el motivo está junto a cada uno. Elegir al menos uno.',
  incomplete: 'Estos estudios juntos no tienen lectura de todos los elementos: medio método no tiene tiempo.',
  allowing: (allowance) => `Suplemento ${allowance}.`,
  stands: (sampling, cycles, groups) =>
    `± ${sampling} % de ${cyclesOf(cycles)} de ${groups} ${groups === 1 ? 'persona-día' : 'persona-días'}.`,
  oneDay: 'Una persona en un día: este ± no dice nada de otras y no se compara con el de varias.',
  moreDays: (t, needed) =>
    `Pocos persona-días lo hacen ancho (t = ${t}); unos ${needed} iguales bastan para ± 5 %.`,
  withRating: (total) => `Con ± 5 % sobre el tiempo valorado: ± ${total} %.`,
  proposal: 'Propuesta, sin emitir:',
  issuedAs: (revision, day) => `Revisión ${revision}, en vigor desde ${day}.`,
  from: (day) => `desde ${day}`,
  blocked:
    'No se hace ningún estándar de un estudio cuyo control del reloj falló o cuyo trabajo no fue estable. Desmarcarlo arriba.',

  working: {
    title: 'Cómo se llegó a esto',
    means: 'Los elementos se emparejan por su nombre; cada lectura usada cuenta una vez.',
    sums: (external, internal, occasional, machine) =>
      `NT ext ${external}, NT int ${internal}, NT occ ${occasional}, MC ${machine} min`,
    terms: (pct, machinePct) => `A ${pct} %, Aₘ ${machinePct} %.`,
    gives: (time) => `ST ${time}`,
    interval: (isMany) =>
      isMany
        ? `h = t(${formatNumber(0.975, 3)}; g − 1) · √(σ_b² · Σnᵢ² ÷ N² + σ_w² ÷ N), de ciclos en persona-días`
        : `h = t(${formatNumber(0.975, 3)}; n − 1) · s ÷ √n, de ciclos completos`,
    stands: (cycles, groups, h) =>
      `N = ${cycles} ${cycles === 1 ? 'ciclo completo' : 'ciclos completos'}, g = ${groups} ${groups === 1 ? 'persona-día' : 'persona-días'}: h = ± ${h} %.`,
    source:
      'Groover, Work Systems, problema 2.7 y capítulo 13; Searle, Casella & McCulloch, Variance Components, capítulo 3; ISO/IEC Guide 98-3.',
  },

  issue: (revision) => `Emitir como revisión ${revision}`,
  issued: (revision) => `La revisión ${revision} ya dice esto.`,
  thin: (cycles) =>
    `Se apoya en ${cycles} ${cycles === 1 ? 'ciclo completo' : 'ciclos completos'} y no se puede dar ninguna precisión`,
  wide: (pct) => `± ${pct} % no alcanza el ± 5 % buscado`,
  allTheSame: 'emitirlo de todos modos',
  inForce: 'En vigor desde',
  checkBy: 'Comprobar antes del',
  issuedBy: 'Emitido por',
  dayFault: 'Dar el día desde el que vale, un día posterior para la comprobación, y quién lo emite.',
  setTarget: 'y hacerlo objetivo de la pieza',
  targetPast: 'Hay un estándar más reciente.',
  targetNow: (day) => `El objetivo cambia ahora; el estándar vale desde ${day}.`,
  revisions: 'Estándares de esta pieza',
  none: 'Aún no se ha emitido ningún estándar.',
  number: 'Revisión',
  since: 'En vigor desde',
  rests: 'Se apoya en',
  restsOn: (studies, cycles, operators) =>
    `${studies} ${studies === 1 ? 'estudio' : 'estudios'}, ${cyclesOf(cycles)}; ${operators}`,
  isInForce: 'en vigor',
  dueTitle: 'Toca hacer un estudio de comprobación:',
  due: {
    date: 'ha llegado su día',
    method: 'el método tiene otra revisión',
    conditions: 'las condiciones son otras',
    drift: 'un estudio posterior se aparta más de un 5 %',
    'one-operator': 'se apoya en una sola persona',
  },
  notDue: 'Nada pide un estudio de comprobación.',
  against: (revision, pct, direction) =>
    `Frente a la revisión ${revision}: tiempo normal un ${pct} % ${direction === 'longer' ? 'más largo' : 'más corto'}.`,
  cycle: (low, high, isShown) =>
    `Diferencia del ciclo medio: de ${low} a ${high} al 95 % (Welch)${isShown ? '' : ', sin cambio demostrado'}, sin valoración, trabajo ocasional ni otras personas y días.`,
  otherBasis: (theirs) => `Su suplemento es ${theirs}: se comparan los tiempos normales.`,
  list: {
    title: 'Estándares',
    check: 'Estudio de comprobación',
    isTarget: 'ya es objetivo',
    part: 'Pieza',
    data: 'Datos tipo: tiempos para otros tamaños',
    sheet: 'Al estándar de esta pieza',
    paper: 'Pasar un estudio en papel',
  },
};

function cyclesOf(count: number): string {
  return `${count} ${count === 1 ? 'ciclo' : 'ciclos'}`;
}
