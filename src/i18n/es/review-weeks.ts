import type { reviewWeeks as english } from '../en/review-weeks';

const days = (count: number) => (count === 1 ? 'un día' : `${count} días`);

/** Words of the weeks. */
export const reviewWeeks: typeof english = {
  figure: 'Seguir',
  figures: {
    efficiency: 'Eficiencia',
    'per-good': 'Tiempo por pieza buena',
    'first-pass': 'Rendimiento a la primera',
  },
  part: (code) => `Pieza ${code}`,
  axis: {
    efficiency: 'ganado ÷ presencia, %',
    'per-good': 'minutos de presencia por pieza buena',
    'first-pass': 'buenas a la primera, %',
    part: 'ciclo neto medio, minutos',
  },
  value: {
    percent: (value) => `${value}\u00a0%`,
    decimal: (minutes) => `${minutes}\u00a0min`,
  },
  sentence: {
    since: (name, day) => `${name} desde ${day}`,
    before: (sentence, first, last, middle) =>
      `${sentence.replace(/\.$/, '')}. Antes, del ${first} al ${last}: mediana ${middle}`,
    calm: (name, centre) => `${name}: ${centre}, y ningún día llama la atención`,
    signals: (name, centre, list) => `${name}: ${centre}. Llama la atención: ${list}`,
    tooFew: (name, middle, count) =>
      `${name}: ${middle}, la mediana de ${days(count)}. Desde diez días, los límites dicen qué es azar.`,
    none: 'Aún no hay nada que seguir: ningún día tiene este dato.',
  },
  standing: {
    provisional: (count) =>
      `Límites de ${days(count)}: provisionales. Desde veinte son firmes y valen hasta que se anote un cambio.`,
    firm: 'Límites de los primeros veinte días de este tramo. Valen hasta que se anote un cambio.',
    odd: 'Entre ellos hay un día que llama la atención o que fue solo parte de un día, y mueve media y límites.',
  },
  wolf: (alarms, count) =>
    `De cómo difieren las piezas dentro de un día, los límites saldrían demasiado estrechos: ${alarms} de ${days(count)} con piezas medidas parecerían raros, solo por la mezcla y el equipo.`,
  period: (first, last) => `${first === null ? '' : `${first} a `}${last}. `,
  pictureTitle: (name) => `${name}, día a día`,
  picture: (run) =>
    `${days(run.days)}, del ${run.first} al ${run.last}. ${run.sentence}. Las cifras están debajo del gráfico.`,
  centre: (value) => `media ${value}`,
  middle: (value) => `mediana ${value}`,
  upper: (value) => `límite ${value}`,
  lower: (value) => `límite ${value}`,
  target: (value) => `objetivo ${value}`,
  method: (revision) => `método, revisión ${revision}`,
  count: 'n',
  legend:
    'Un punto por día. Línea horizontal: media, o mediana mientras no hay límites. Línea de puntos: límites de lo que hace el azar (media ± 2,66 × paso medio de un día a otro). Con anillo: llama la atención.',
  countLegend: { good: ' n: piezas buenas.', done: ' n: piezas terminadas.' },
  targetLegend: ' Línea discontinua: objetivo.',
  fewLegend: ' Hueco: menos de cinco piezas, o solo parte de un día.',
  changeLegend: ' Línea vertical: el trabajo cambió, los límites empiezan de nuevo.',
  steps: {
    title: 'Pasos de un día a otro',
    pictureTitle: (name) => `${name}: a qué distancia está cada día del anterior`,
    says: (mean, limit) =>
      `Paso medio ${mean}; un paso de más de ${limit} dice que un día fue distinto del anterior.`,
    axis: { time: 'paso, minutos', percent: 'paso, puntos porcentuales' },
    centre: (value) => `media ${value}`,
    upper: (value) => `límite ${value}`,
    points: (value) => `${value} puntos`,
    note: 'Rango móvil; su límite es 3,27 × el paso medio, del que salen también los límites de arriba.',
  },
  sheet: {
    title: (count) => `Las cifras de ${days(count)}`,
    day: 'Día',
    value: 'Valor',
    n: 'n',
    said: 'Qué dice el gráfico y qué se anotó',
    partDay: 'solo parte de un día',
    signals: {
      'beyond-limits': { high: 'por encima del límite', low: 'por debajo del límite' },
      'eight-on-one-side': {
        high: 'octavo seguido por encima de la media',
        low: 'octavo seguido por debajo de la media',
      },
    },
  },
  notes: {
    title: 'Notas de días',
    write: 'Escribir una nota de un día',
    none: 'Ninguna nota en estos días.',
  },
  lost: {
    title: 'Lo que más costó',
    which: '¿De qué días?',
    since: (day) => `Todo desde el ${day}`,
    week: (monday) => `La semana del ${monday}`,
    sentence: (reason, cost, share, of, since, until) =>
      `${reason}: ${cost} de producción ${until === null ? `desde el ${since}` : `del ${since} al ${until}`}, el ${share} % de ${of} en total.`,
    none: 'En estos días no se perdió tiempo.',
    cost: 'Coste en producción',
    recorded: 'Registrado',
    soFar: 'Hasta aquí',
    note: 'Una parada cuesta menos de lo que dura donde, según se indicó, la máquina o la persona siguió trabajando. Lo que nadie indicó va al final.',
  },
  standards: {
    title: 'Objetivos que parecen equivocados',
    cannotTell:
      'Aún no se puede decir: hacen falta al menos dos piezas con objetivo, hechas a la par en cinco días.',
    none: 'Ninguno: ninguna pieza gasta de su objetivo mucho más o menos que las demás del suyo.',
    more: (part, percent, count) =>
      `${part} gasta de su objetivo un ${percent} % más que las otras piezas del suyo, en manos de quien sea, en ${days(count)}. Hay que mirar el objetivo, no a las personas.`,
    less: (part, percent, count) =>
      `${part} gasta de su objetivo un ${percent} % menos que las otras piezas del suyo, en manos de quien sea, en ${days(count)}. Hay que mirar el objetivo, no a las personas.`,
  },
  people: {
    title: 'Cifras de personas concretas',
    note: 'Ocultas salvo que haya una finalidad, que queda registrada con el código propio. Según las piezas propias, sin paradas, desde cinco días. Por orden de código: aquí no hay clasificación de nadie.',
    purpose: 'Finalidad',
    by: 'Código propio',
    show: 'Registrar y mostrar',
    person: 'Código',
    dayCount: 'Días',
    partCount: 'Piezas',
    share: 'Tiempo neto ÷ objetivo',
    value: (percent, half) => `${percent} ± ${half}\u00a0%`,
    tooFew: 'menos de cinco días',
    period: (from, to, isCut) =>
      `Del ${from} al ${to}${isCut ? ', desde que cambió el trabajo' : ''}. ±: intervalo del 95 % de la media de los días.`,
    hide: 'Ocultar otra vez',
    shown: (purpose) => `Finalidad registrada: ${purpose}`,
    looks: (count) => (count === 1 ? 'Consultado una vez' : `Consultado ${count} veces`),
    look: (day, by, purpose) => `${day}, ${by}: ${purpose}`,
  },
};
