import type { cellLeadTime as english } from '../en/cell-lead-time';

/** Words of the page on lots and lead time. */
export const cellLeadTime: typeof english = {
  taps: 'Lotes en la célula',
  arrived: (parts) => `Llegada: ${parts}`,
  released: (parts) => `Listo para la operación siguiente: ${parts}`,
  parts: (count) => `${count} ${count === 1 ? 'pieza' : 'piezas'}`,
  partsArrive: 'Piezas en un lote que llega',
  partsLeave: 'Piezas en un lote que sale',
  otherLots: 'Otros lotes: tamaños, números, un escaneo',
  scan: 'Número de lote, escrito o escaneado, y después Intro',
  scanHint: 'Un número que no está dentro llega; uno que está dentro sale.',
  undo: 'Deshacer',
  tookArrived: (parts) => `Registrada la llegada: ${parts}.`,
  tookFree: (parts) => `Registrado como libre: ${parts}.`,
  tookUnseen: (parts, unseen) =>
    `Registrado como libre: ${parts}. De ${unseen} nadie vio la llegada, así que no hay tiempo de paso.`,
  tookLot: {
    arrived: (lot) => `Registrada la llegada: ${lot}.`,
    released: (lot) => `Registrado como libre: ${lot}.`,
  },
  tookBack: 'Deshecho.',
  failed: (problem) => `No registrado: ${problem}`,
  nothing: 'Según estos registros, no hay nada en la célula.',
  inside: 'Ahora en la célula',
  partsName: 'piezas',
  insideOf: (parts, count) => (count === 1 ? `${parts} en un lote` : `${parts} en ${count} lotes`),
  lot: 'Lote',
  unnamed: 'sin número',
  came: 'llegó',
  unseen: (parts) => `Salió sin que nadie viera la llegada: ${parts}, sin tiempo de paso aquí.`,
  title: (half, high) =>
    `La mitad de las piezas quedó libre en ${half} como máximo; nueve de cada diez, en ${high}.`,
  titleFew: (parts, mean) => `Hasta ahora ${parts}, con una media de ${mean} en la célula.`,
  none: 'Aún no ha salido ningún lote: tocar cuando uno llega y cuando queda libre.',
  noTurns:
    'Por el reloj de pared: no se registró ningún periodo de trabajo alrededor de estos lotes, así que nadie sabe cuándo trabajó la célula.',
  overnight: (parts, others) =>
    `Además, ${parts} dentro mientras nadie trabajaba, por ejemplo de noche; no se incluyen en estas ${others}.`,
  clocks: { working: 'Tiempo de trabajo', wall: 'Reloj de pared' },
  clock: 'Todas las piezas, contadas por',
  chart: 'Tiempos de paso de las piezas, minutos',
  figures: {
    n: 'piezas',
    median: 'la mitad en',
    p80: '8 de 10',
    p90: '9 de 10',
    longest: 'máximo',
    mean: 'media',
  },
  little: (inside, by) =>
    `Comprobación: ${inside} piezas dentro de media, contadas; ${by} según tasa × tiempo de paso (ley de Little).`,
  littleOff:
    'Difieren en más de un 1 %: de algunos lotes no se registró la llegada o la salida, o muchos siguen dentro.',
  pce: (share, total, minutes, elements) =>
    `Se añade valor en el ${share} de esos ${total}: ${minutes}, con ${elements}.`,
  pceWrong:
    'El trabajo que añade valor dura más que el tiempo de paso; por eso no se muestra una proporción.',
  pceNone: 'Indicar abajo qué elementos añaden valor; aquí aparecerá su proporción del tiempo de paso.',
  stack: 'En qué se va el tiempo de paso de una pieza, según los tamaños de lote',
  stackSays: {
    arrivalLot: (part, total, share) =>
      `${part}: ${total}, y el ${share} es esperar a las piezas de su propio lote: lotes más pequeños, no una célula más rápida.`,
    flow: (part, total, share) =>
      `${part}: ${total}, y el ${share} es el trabajo mismo: aquí compensa una célula más rápida.`,
    trolley: (part, total, share) =>
      `${part}: ${total}, y el ${share} es esperar a que se llene el carro: carros más pequeños.`,
  },
  terms: { arrivalLot: 'lote de llegada', flow: 'flujo', trolley: 'carro' },
  lotTakes: (lot, minutes) => `Un lote de ${lot} tarda aquí ${minutes}, con paradas y trabajo ocasional.`,
  lotTitle: 'Solo con los tiempos del estudio: por lotes o pieza a pieza',
  lotSize: 'Piezas del lote',
  ways: {
    batch: 'por lotes, una persona',
    cell: 'pieza a pieza, esta célula',
    line: 'pieza a pieza, un puesto por elemento',
  },
  lotRows: {
    first: 'sale la primera pieza, min',
    last: 'sale la última pieza, min',
    late: '9 de 10 lotes han salido en, min',
    inside: 'piezas empezadas, sin terminar',
    faulty: 'defectuosas, en el peor caso, antes de que se vea',
  },
  settings: 'Cómo se alimenta, se vacía y se detiene la célula',
  valueAdding: 'Estos elementos añaden valor a la pieza',
  putDown: 'La pieza deja las manos con',
  lastOfAll: 'el último elemento del ciclo',
  byOther: 'Estos los hace otra persona (la inspección, por ejemplo)',
  holding: 'Con estos motivos se para la máquina; con cualquier otro, la persona',
  set: 'Guardar para la célula',
  how: [
    'Tiempo de paso: desde la llegada a la célula hasta que la pieza queda libre para la operación siguiente. Una pieza terminada que espera al carro sigue en la célula.',
    'Tiempo de trabajo es cuando hubo periodos de trabajo en marcha, sin sus pausas previstas.',
    'Sin número, lo que llegó primero sale primero.',
    'Por el reloj de pared, se cuenta aparte la pieza que estuvo dentro mientras nadie trabajó durante más de cuatro horas. Con menos de diez piezas no se dan proporciones.',
    'La barra es el tiempo de paso medio de la simulación de las otras páginas, dividido donde la pieza se empieza y donde se deja. Como fórmula: c·(r + (Q − 1)/2) + F + c·(q − 1)/2, con c el intervalo entre piezas, Q el lote de llegada, r lo que queda cuando llega, q el carro y F el camino propio de la pieza.',
    'Un lote tarda el camino de su primera pieza y un intervalo por cada una de las demás, según la simulación.',
    'Ley de Little: piezas dentro = tasa × tiempo de paso; exacta en todo tiempo que empieza y termina vacío.',
    'Proporción que añade valor: solo trabajo en esta pieza, nunca lo que se hace a su lado; por eso no puede pasar del 100 %.',
    'Lote: por lotes Q·Σt; pieza a pieza Σt + (Q − 1)·ciclo; con un puesto por elemento Σt + (Q − 1)·el más largo. Un ajuste equivocado se ve cuando una pieza está terminada.',
  ],
};
