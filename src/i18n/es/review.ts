import type { review as english } from '../en/review';

const parts = (count: number) => `${count} ${count === 1 ? 'pieza' : 'piezas'}`;
const turns = (count: number) => `${count} ${count === 1 ? 'periodo' : 'periodos'}`;

/** Words of the Review screen. */
export const review: typeof english = {
  reading: 'Leyendo los días …',
  trouble: (problem) => `No se pudieron leer los días (${problem}). No se ha borrado nada.`,
  tryAgain: 'Reintentar',

  emptyTitle: 'Aún no hay ningún periodo registrado',
  emptyText:
    'Las piezas que se tocan en Ritmo aparecen aquí en cuanto están terminadas, cada una junto a su objetivo.',
  openPace: 'Abrir Ritmo',
  enterNeedsPart: 'Un periodo se anota con sus piezas: anotar primero una pieza en Taller.',
  openShop: 'Abrir Taller',
  openDemo: 'Ver el taller de ejemplo',

  day: 'Día',
  dayInList: (day, count) => `${day}: ${parts(count)}`,
  earlier: '◂ Anterior',
  later: 'Siguiente ▸',
  noSuchDay: (day) => `No se registró nada el ${day}.`,
  newestDay: 'Ver el día más reciente',

  /** The day in words: what it was, then what it was made of. */
  head: {
    forPaper: (day) => `${day}. `,
    answer: (efficiency, lost) => `Eficiencia del ${efficiency}\u00a0%; ${lost}.`,
    took: (n, done, against, lost) => `${n} de ${parts(done)}: ${against}; ${lost}.`,
    noTarget: (lost) => `Ninguna pieza de este día ganó un tiempo objetivo; ${lost}.`,
    noParts: (lost) => `Este día no se terminó ninguna pieza; ${lost}.`,
    noTime: 'El periodo empezó y después no se tocó nada.',
    entered: (count, efficiency, lost) =>
      `${parts(count)} ${count === 1 ? 'anotada' : 'anotadas'} después, ${efficiency === null ? '' : `eficiencia del ${efficiency}\u00a0%, `}${lost}.`,
    noneCounted: (lost) => `Aún no entra ninguna pieza en una media; ${lost}.`,
    takenAway: 'El periodo que se había anotado en este día se volvió a retirar.',
    lost: (time) => `tiempo perdido: ${time}`,
    lostUnknown: 'tiempo perdido desconocido',
    unaccounted: (time) => `sin justificar: ${time}`,
    workAlone: (n, done, against) =>
      `Tiempo ganado ÷ presencia. Solo el trabajo (${n} de ${parts(done)}): ${against}.`,
    nothingLost: 'sin tiempo perdido',
    made: (day) =>
      `${parts(day.done)} en ${turns(day.turns)} de ${day.elapsed}${day.turns > 1 ? ' en total' : ''}: ${day.good} ${day.good === 1 ? 'buena' : 'buenas'}${day.rework > 0 ? ` (${day.good - day.rework} a la primera, ${day.rework} con retrabajo)` : ''}, ${day.scrap} de desecho.`,
    mix: {
      harder: (mean, usual) =>
        `Mezcla más dura que de costumbre: ${mean} de objetivo por pieza (sin preparaciones); otros días, ${usual}.`,
      easier: (mean, usual) =>
        `Mezcla más fácil que de costumbre: ${mean} de objetivo por pieza (sin preparaciones); otros días, ${usual}.`,
      usual: (mean, usual) =>
        `La mezcla de costumbre: ${mean} de objetivo por pieza (sin preparaciones); otros días, ${usual}.`,
    },
    mostLost: (reason, time) => `Donde más tiempo se perdió: ${reason}, ${time}.`,
    questions: (count) => `${count === 1 ? 'Una pregunta' : `${count} preguntas`} por aclarar ▾`,
    stillOpen: (count) =>
      count === 1
        ? 'Un periodo sigue abierto y se cuenta hasta el último toque.'
        : `${count} periodos siguen abiertos y se cuentan hasta el último toque.`,
  },
  /** One wording wherever a time stands beside its target. */
  against: {
    faster: (percent) => `un ${percent}\u00a0% menos de tiempo que el objetivo`,
    slower: (percent) => `un ${percent}\u00a0% más de tiempo que el objetivo`,
    level: () => 'en el tiempo objetivo',
  },
  againstShort: {
    faster: { arrow: '◂', word: 'menos' },
    slower: { arrow: '▸', word: 'más' },
    level: { arrow: '=', word: 'en el objetivo' },
  },

  pictureTitle: (day) => `Ciclo neto de cada pieza junto a su objetivo, ${day}`,
  picture: {
    axis: 'ciclo neto, minutos por pieza (sin paradas)',
    legend:
      'Barra hasta la marca gruesa: media. Línea fina: una desviación estándar a cada lado. Marca alta con punta: objetivo.',
    fewLegend: ' Menos de cinco piezas: cada una es un punto, y la línea fina es su rango.',
    note: (n, counted) => (counted < n ? `n ${counted} de ${n}` : `n ${n}`),
    target: (time) => `objetivo ${time}`,
    meanTarget: (time) => `objetivo medio ${time}`,
    verdict: (arrow, percent, word) => `${arrow} ${percent} % ${word}`,
    noTarget: 'sin objetivo',
    scrapLegend: ' Una pieza de desecho gastó su tiempo y no ganó ningún objetivo.',
    meanNote: (clock, decimal, scrap) =>
      scrap > 0 ? `${clock}, ${scrap} de desecho` : `${clock} (${decimal} min)`,
    line: (line) =>
      `${line.part}: ${line.n === 1 ? 'una pieza' : `${line.n} piezas`}, media ${line.mean}, ${line.target}, ${line.verdict}.`,
  },

  sheet: {
    title: 'Piezas del día',
    hint: 'Tocar una cifra para ver cómo se calculó.',
    part: 'Pieza',
    n: 'n',
    counted: (counted) => `${counted === 1 ? 'cuenta' : 'cuentan'}\u00a0${counted}`,
    mean: 'Ciclo neto medio',
    spread: 'Dispersión',
    target: 'Objetivo',
    share: 'Frente al objetivo',
    good: 'Buenas a la primera',
    rework: 'Retrabajo',
    scrap: 'Desecho',
    all: 'Todas las piezas',
    minutes: (decimal) => `${decimal}\u00a0min`,
    /** Held together: a range that is broken over two lines reads as two figures. */
    fromTo: (shortest, longest) => `${shortest}\u2060–\u2060${longest}`,
    deviation: 'desv. est.',
    range: 'rango',
    oneOnly: 'una sola pieza',
    noneCounted: 'ninguna cuenta',
    changed: 'cambió en el día',
    none: '–',
  },

  ledger: {
    category: 'Categoría',
    time: 'Tiempo',
    share: 'Proporción',
    attended: (attended, elapsed, meals) =>
      `Presencia: ${attended} = ${elapsed} − ${meals} de comidas, según el calendario.`,
    untapped: (pieces) =>
      `Nadie tocó eso como pausa; por eso figura arriba como lo que estaba en marcha: ${pieces}.`,
  },

  lost: {
    title: 'Tiempo perdido, por motivo',
    none: 'No se perdió tiempo.',
    unknown: (turns) =>
      `No se sabe: ${turns === 1 ? 'un periodo se anotó' : `${turns} periodos se anotaron`} después, y nadie indicó lo que se perdió.`,
    unknownToo: (turns) =>
      `No incluido: lo que se perdió en ${turns === 1 ? 'el periodo anotado' : `${turns} periodos anotados`} después. Nadie lo indicó.`,
    reason: 'Motivo',
    time: 'Tiempo',
    count: 'Veces',
    all: 'Todos los motivos',
    besides: 'Ni tiempo perdido ni trabajo en piezas:',
    besidesLine: (name, time) => `${name} ${time}`,
    note: '«Sin indicar» va al final y no es culpa de nadie.',
  },

  note: {
    write: 'Escribir una nota de este día',
    isChange: 'Desde este día el trabajo es otro: los límites empiezan de nuevo',
    by: 'Código propio',
    text: 'Qué pasó',
    save: 'Guardar la nota',
    cancel: 'Cancelar',
    changed: 'cambió el trabajo',
    before: (day, text) => `El trabajo cambió el ${day} (${text}): este día es del trabajo anterior.`,
  },

  /** Lo que se quita o se retira sigue en los registros. */
  takeAway: {
    away: 'Quitar',
    back: 'Retirar',
    keep: 'Dejarlo',
    note: '¿Quitar esta nota?',
    change: '¿Quitar esta nota? Entonces los límites ya no empiezan de nuevo en su día.',
    timing: '¿Quitar este tiempo?',
    quotation: '¿Retirar esta oferta? Sigue en la lista, marcada.',
    comparisonBack: 'Retirar esta comparación',
    comparison: 'Sigue en «Ya comparados», marcada.',
    wasBack: (day) => `retirada el ${day}`,
  },

  /** What is opened only by those who want it. */
  more: {
    corrections: (count) =>
      count === 1 ? 'Una corrección en este día' : `${count} correcciones en este día`,
    atStation: (count, what) =>
      `${count === 1 ? 'Una pregunta se respondió' : `${count} preguntas se respondieron`} en el puesto: ${what}.`,
    times: (count, what) => (count === 1 ? what : `${what} (${count} veces)`),
  },

  hours: (hours, minutes) => (hours > 0 ? `${hours}\u00a0h\u00a0${minutes}\u00a0min` : `${minutes}\u00a0min`),
  close: 'Cerrar',
};
