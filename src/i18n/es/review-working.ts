import type { reviewWorking as english } from '../en/review-working';

/** Words with which a figure of the Review screen explains itself. */
export const reviewWorking: typeof english = {
  numbers: 'Números que entraron',
  seconds: 'Ciclos netos en el orden en que se hicieron, segundos:',
  count: {
    title: (part) => `n de ${part}`,
    says: 'Piezas tocadas como terminadas este día, sin toques retirados ni segundos toques detrás de los cuales no puede haber una pieza.',
    put: (counted, n) =>
      `Cuentan ${counted} de ${n}: las demás no entran en ninguna media, porque hay una pregunta abierta sobre ellas o alguien las apartó.`,
  },
  mean: {
    title: (part) => `Ciclo neto medio de ${part}`,
    says: 'Ciclo neto: del toque de la pieza anterior al toque de esta, sin paradas; en una pieza trabajada por lotes, el tiempo dedicado a ella. Cuentan las retrabajadas y las de desecho; las que tienen una pregunta abierta o se apartaron, no.',
    none: 'Aún no cuenta ninguna pieza: las preguntas sobre ellas están en «Por aclarar».',
    formula: 'media = suma de ciclos netos ÷ n que cuentan',
    put: (sum, n, mean, clock) => `${sum} min ÷ ${n} = ${mean} min = ${clock}`,
  },
  deviation: {
    title: (part) => `Dispersión de ${part}`,
    says: 'Desviación estándar muestral de los ciclos netos: más o menos a qué distancia de la media está una pieza suelta. Dice cuán iguales salieron las piezas, no lo bien que trabajó nadie.',
    formula: 's = √( suma de (ciclo neto − media)² ÷ (n − 1) )',
    put: (n, mean, deviation) => `n ${n}, media ${mean} min: s = ${deviation} min`,
  },
  range: {
    title: (part) => `Dispersión de ${part}`,
    says: 'Con dos a cuatro piezas, una desviación estándar dice poco; por eso aquí están el ciclo más corto y el más largo.',
    formula: 'rango = del ciclo neto más corto al más largo',
    one: 'Una sola pieza no tiene dispersión.',
  },
  target: {
    title: (part) => `Objetivo de ${part}`,
    says: 'El tiempo que debería llevar una pieza, tal como lo llevaba la última del día. En Taller se ve de dónde sale.',
    changed: 'Cambió durante el día. Cada pieza se compara con el objetivo que ella misma llevaba.',
    none: 'No se fijó ningún objetivo para esta pieza, así que no se compara con ninguno.',
  },
  share: {
    title: (part) => `Frente al objetivo, ${part}`,
    all: 'Frente al objetivo, todas las piezas del día',
    says: 'Tiempo neto de las piezas entre el tiempo que conceden sus objetivos. Cada pieza cuenta con el objetivo que llevaba. Una pieza de desecho gastó su tiempo y no gana ningún objetivo. Las piezas sin objetivo no cuentan en ninguno de los dos lados. Un objetivo que es un tiempo estándar incluye suplementos; por eso los ciclos netos suelen durar menos.',
    formula: 'proporción = suma de ciclos netos ÷ suma de objetivos de piezas buenas',
    put: (of) =>
      `${of.net} min ÷ ${of.target} min = ${of.share} %: ${of.against} (${of.n} ${of.n === 1 ? 'pieza' : 'piezas'} con objetivo${of.scrap > 0 ? `, ${of.scrap} de desecho` : ''})`,
  },
  outcome: {
    title: (part) => `Buenas, retrabajo y desecho de ${part}`,
    says: 'Tal como se juzgó en Ritmo. Una pieza que nadie juzgó cuenta como buena: buena a la primera.',
    put: (good, rework, scrap, n) => `${good} + ${rework} + ${scrap} = ${n}`,
  },
  elapsed: {
    title: 'Tiempo transcurrido',
    says: 'Del primer registro de cada periodo de trabajo al último, sumado. No es un registro de horas trabajadas.',
    formula: 'transcurrido = suma de todas las categorías',
  },
  category: {
    formula: 'suma de los tramos de tiempo de esta categoría',
    says: {
      cycle:
        'De toque a toque, sin paradas: los ciclos netos de las piezas y, mientras un periodo está abierto, el de la pieza en curso.',
      'set-up': 'Parado, con un motivo que el taller cuenta como preparación.',
      stoppage: 'Parado, con un motivo que el taller cuenta como parada, o sin indicar ninguno.',
      rework: 'Parado, con un motivo que el taller cuenta como retrabajo.',
      'planned-break': 'Parado, con un motivo que el taller cuenta como pausa prevista.',
      'called-away':
        'Parado, con un motivo que el taller cuenta como llamado a otra tarea. No está en el ritmo de nadie ni en el tiempo de ninguna pieza.',
      unaccounted:
        'Nadie dijo qué fue: sobre todo, el tiempo que sigue a la última pieza de un periodo de trabajo.',
    },
    put: (time, elapsed, share) => `${time} de ${elapsed} transcurridos = ${share} %`,
  },
  lost: {
    says: 'De «Parar» al toque con el que se siguió. El motivo es el último que se dio. Las preparaciones y las pausas previstas quedan fuera: ese tiempo no lo perdió nadie.',
    formula: 'tiempo = suma de las paradas con este motivo, en segundos enteros',
    put: (count, time) => `${count} ${count === 1 ? 'parada' : 'paradas'}, ${time} en total`,
  },
};
