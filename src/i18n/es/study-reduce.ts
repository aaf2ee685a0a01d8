import type { studyReduce as english } from '../en/study-reduce';

const whole = (n: number) => `${n} ${n === 1 ? 'ciclo completo' : 'ciclos completos'}`;

/** Words of what is checked before a study is used: the clock, whether the work stood still, how often things come. */
export const studyReduce: typeof english = {
  clock: {
    title: 'Control del reloj',
    elapsed: 'Transcurrido, según el reloj',
    before: 'Antes del primer toque',
    after: 'Después del último punto de corte',
    effective: 'Elementos',
    ineffective: 'Extraños, y espera de la máquina',
    unaccounted: 'Sin justificar',
    unaccountedIs: (time, pct) => `${time}, ${pct} %`,
    good: 'Como máximo un 2 % queda sin justificar: el reloj concuerda.',
    bad: (pct) =>
      `No utilizable: el ${pct} % del tiempo queda sin justificar. Por encima del 2 % se repite el estudio.`,
    none: 'Sin control del reloj: el estudio no se cronometró aquí o sigue en curso.',
    formula:
      'Sin justificar = transcurrido − (antes + después + elementos + extraños y espera). Niebel & Freivalds; límite 2 %.',
    byTablet: 'Comparado con el propio reloj de la tableta.',
    byShop: 'Leído en el reloj del taller.',
    type: 'Leerlo en el reloj del taller',
    started: 'Llegada, h:mm o h:mm:ss',
    finished: 'Salida',
    beforeMin: 'Antes del primer toque, min',
    afterMin: 'Después del último, min',
    fault: 'Dar las dos horas como 7:05 o 7:05:30, y los minutos con números.',
    keep: 'Guardar',
    leave: 'Dejarlo',
  },
  oneLane: {
    whole: (runs) =>
      `Cronometrado uno tras otro: ${runs} se lee desde que arranca la máquina hasta su propio toque, con el trabajo hecho entretanto dentro. Donde la máquina se detuvo antes de acabar ese trabajo, su tiempo es aquí demasiado largo.`,
    behind: (work) =>
      `Según el método, con la máquina en marcha se hace: ${work}. Pero se cronometró después de que se detuviera, así que cuenta como hecho con la máquina parada. Cronometrar persona y máquina a la vez para verlo dentro de la marcha.`,
  },
  steady: {
    title: '¿Se mantuvo el ritmo?',
    few: (n) => `Trabajo manual de ${whole(n)}: se puede decir a partir de cinco.`,
    trendFew: (n) => `Trabajo manual de ${whole(n)}: si cambia, se ve a partir de diez.`,
    none: (n) => `Ninguna tendencia en el trabajo manual de ${whole(n)}.`,
    falling: (pct) =>
      `Los ciclos se acortaron un ${pct} %: alguien estaba aprendiendo. El estudio describe un momento; de él no se hace ningún estándar.`,
    rising: (pct) =>
      `Los ciclos se alargaron un ${pct} %: fatiga, o una herramienta que pierde filo. Buscar lo que vuelve de vez en cuando y darle una frecuencia; de esto no se hace ningún estándar.`,
    order: 'Los ciclos cortos y largos vienen por rachas y no al azar.',
    run: 'Ocho o más seguidos están al mismo lado de la media.',
    beyond: (cycles) => `Fuera de los límites naturales: ciclo ${cycles}.`,
    closer: (from, to) => `La valoración llevó la dispersión del trabajo manual del ${from} % al ${to} %.`,
    wider: (from, to) =>
      `Valorado, el trabajo manual se dispersa más que observado: del ${from} % al ${to} %. Las valoraciones que siguen el ritmo la reducen.`,
    chart: 'Trabajo manual valorado de cada ciclo completo, en su orden',
    source:
      'Pendiente y mitades sobre logaritmos, prueba de rachas de la mediana, límites naturales: NIST/SEMATECH e-Handbook.',
  },
  frequency: {
    sources: {
      method: 'según el método',
      record: 'de un registro de producción',
      observed: 'como se vio en este estudio',
    },
    source: 'De dónde se sabe',
    seen: (count, units) =>
      `Visto ${count === 1 ? 'una vez' : `${count} veces`} en ${units} ${units === 1 ? 'unidad' : 'unidades'} de trabajo`,
    between: (low, high) =>
      `. Solo por azar, eso podría ser cualquier cosa entre 1 de cada ${low} y 1 de cada ${high}.`,
    never: '. Eso no dice nada de cada cuánto viene.',
    few: 'Se vieron menos de cinco: consultar el método o un registro de producción.',
    observe: (units) => `Tomar lo visto: una vez cada ${units}`,
    record: 'Un registro de producción dice: una vez cada',
    keep: 'Guardar',
    interval: 'Intervalo: Garwood 1936.',
  },
  combination: {
    title: 'Hoja combinada de trabajo estandarizado',
    heads: ['N.º', 'Paso', 'Manual', 'Auto', 'Andar'],
    together: 'En total',
    cycle: (time) => `ciclo ${time}`,
    target: (time) => `objetivo ${time}`,
    sum: (cycle, waiting) =>
      `Un ciclo lleva ${cycle} de tiempo normal; de ellos, la persona espera ${waiting}. Los suplementos y el trabajo ocasional se añaden.`,
    starts: (machine, element) => `${machine} arranca cuando termina «${element}».`,
    key: 'Continua: manual. Discontinua: la máquina en marcha. Ondulada: andar. Flecha en ambos extremos: espera.',
  },
  paper: {
    printed: (when) => `Impreso ${when} con los registros hasta entonces.`,
    formulas: 'Fórmulas: NT = media de OT · R ÷ 100; ± = t · s ÷ √n; ',
    signs: ['Analista', 'Supervisión', 'Visto por la persona en el puesto o quien la represente'],
    print: 'Imprimir',
  },
};
