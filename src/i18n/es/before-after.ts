import type { beforeAfterWords as english } from '../en/before-after';

const days = (count: number) => (count === 1 ? 'un día' : `${count} días`);
const lessOrMore = { less: 'menos', more: 'más' } as const;

/** Words of before and after. */
export const beforeAfterWords: typeof english = {
  titleNone: 'Aún no se ha comparado nada',
  hint: 'Dos periodos, una diferencia que importa: fijada antes de que nadie mire, porque un umbral elegido después no prueba nada.',
  verdicts: {
    improved: (what) => `${what}: mejoró, al menos en lo que importa`,
    'improved-size-uncertain': (what) => `${what}: mejoró, cuánto no es seguro`,
    'not-shown': (what) => `${what}: no se ha demostrado una diferencia`,
    'no-difference-that-matters': (what) => `${what}: ninguna diferencia que importe`,
    'worse-size-uncertain': (what) => `${what}: empeoró, cuánto no es seguro`,
    worse: (what) => `${what}: empeoró, al menos en lo que importa`,
  },
  cannot: {
    'too-few-days': 'Cada periodo necesita al menos dos días con piezas que cuenten.',
    'no-part-in-both': 'Ninguna pieza se hizo en dos días o más en ambos periodos.',
    'no-spread': 'Los días no difieren en nada, así que nada dice cuán segura es una diferencia.',
  },
  size: (after, before, percent, side) =>
    `Ciclo neto de ${after} por pieza en lugar de ${before}: un ${percent} % ${lessOrMore[side]} de tiempo.`,
  sure: (difference, low, high) =>
    `La diferencia es de ${difference}, y está entre ${low} y ${high} (95 %; lo que se repite es el día).`,
  rate: (times, low, high) => `${times} veces la cantidad por unidad de tiempo (de ${low} a ${high}).`,
  fixedBefore: (percent, time, when, by) =>
    `Fijado de antemano: importa un ${percent} % (${time}). Anotado el ${when}${by ? ` por ${by}` : ''}.`,
  fixedAfter: (percent, time, when, by) =>
    `Se dijo que importa un ${percent} % (${time}). Anotado el ${when}${by ? ` por ${by}` : ''}, cuando los días posteriores ya se habían trabajado: si alguien los había visto, la tableta no puede saberlo.`,
  basis: (before, beforeDays, after, afterDays) =>
    `Antes: ${before} piezas en ${days(beforeDays)}. Después: ${after} piezas en ${days(afterDays)}.`,
  fewDays: 'Menos de cinco días en un lado: apenas se sabe cuánto varían los días por azar.',
  overMix: (codes) => `Sobre una misma mezcla de ${codes}, ponderada por lo que se hizo en ambos periodos.`,
  leftOut: (codes) => `Fuera, por no haberse hecho en ambos: ${codes}.`,
  changeInside: 'Dentro de uno de los periodos se anotó un cambio del trabajo: contiene más de un método.',
  picture: {
    title: 'La diferencia con su intervalo, junto a lo que importa',
    matters: 'importa',
    same: 'sin diferencia',
    less: '◂ menos tiempo',
    more: 'más tiempo ▸',
    axis: 'minutos por pieza, después − antes',
  },
  beside: {
    title: {
      rose: (before, after) => `Buenas a la primera: subió del ${before} al ${after}`,
      fell: (before, after) =>
        `Buenas a la primera: bajó del ${before} al ${after}; una célula más rápida con menor rendimiento no es una mejora`,
      alike: (before, after) => `Buenas a la primera: ${before} antes, ${after} después; puede ser azar`,
      unknown: 'Junto al tiempo',
    },
    what: 'Junto al tiempo',
    before: 'Antes',
    after: 'Después',
    yield: 'Buenas a la primera',
    efficiency: 'Eficiencia',
    perGood: 'Tiempo de presencia por pieza buena',
    leadTime: 'Tiempo de paso, de la llegada a libre',
    leadTimeValue: (median, p90) => `${median} (nueve de cada diez en ${p90} como máximo)`,
    noLots: 'sin lotes registrados',
    note: 'Tiempo de paso: mediana del tiempo de trabajo desde que llega un lote hasta que sus piezas quedan libres para la operación siguiente.',
    scrap: 'Desecho',
    percent: (value) => `${value} %`,
    between: (value, low, high) => `${value} % (de ${low} a ${high})`,
    none: '–',
  },
  form: {
    open: 'Comparar dos periodos',
    title: 'Qué se cambió',
    part: 'Pieza',
    allParts: 'Todas las piezas, con una misma mezcla',
    beforeFrom: 'Antes, del',
    beforeTo: 'al',
    afterFrom: 'Después, del',
    afterTo: 'al ',
    threshold: 'Diferencia que importa, %',
    thresholdHint: 'El cambio más pequeño que compensa el esfuerzo: según el trabajo, no según estas cifras.',
    by: 'Código propio',
    save: 'Fijarla y después mirar',
    order: 'El periodo anterior termina antes de que empiece el posterior.',
  },
  others: 'Ya comparados',
  old: {
    title: 'Un tiempo del método antiguo, de antes de la tableta',
    says: 'Cronometrado una vez a mano, aún se puede comparar con lo que ha registrado la tableta.',
    write: 'Anotar un tiempo antiguo',
    part: 'Pieza',
    time: 'Tiempo antiguo de una pieza, m:ss',
    newTime: 'Tiempo nuevo, m:ss, si también se cronometró a mano',
    understood: (time) => `= ${time} por pieza.`,
    understoodBoth: (before, after, size) => `= ${before} antes, ${after} ahora por pieza: ${size}.`,
    size: (percent, side, times) =>
      `un ${percent} % ${lessOrMore[side]} de tiempo, ${times} veces la cantidad por unidad de tiempo`,
    hours: 'Es una hora o más: cinco minutos se escriben 5:00.',
    noPart: 'Un tiempo es de una pieza, y el taller aún no tiene ninguna.',
    openShop: 'Anotar una pieza en Taller',
    nowByHand: 'Ahora: también cronometrado a mano.',
    source: 'Cómo se tomó, y quién lo tomó',
    noSource: 'lo habitual entonces, sin fuente',
    by: 'Código propio',
    save: 'Anotarlo',
    notATime: 'No es un tiempo: escribirlo como 5:00.',
    result: (part, before, after, percent, side, times) =>
      `${part}: ${after} ahora frente a ${before}: un ${percent} % ${lessOrMore[side]} de tiempo, ${times} veces la cantidad por unidad de tiempo.`,
    caution: 'Un solo tiempo sin dispersión dice cuánto, no con qué seguridad.',
    now: (count) => `Ahora: media de ${days(count)}.`,
    takenAs: (source) => `Tiempo antiguo: ${source}.`,
    noneMade: (part, before) =>
      `${part}: ${before} antes; no hay tiempo de hoy con el que compararlo, porque no se hizo ninguna en los días leídos.`,
  },
};
