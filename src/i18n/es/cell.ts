import type { cell as english, cellGoverns as englishGoverns, cellSource as englishSource } from '../en/cell';
import { andBefore } from './and-before';

const wholeCycles = (count: number) => `${count} ${count === 1 ? 'ciclo completo' : 'ciclos completos'}`;

/** Words of the Cell screen: what governs, and its frame. */
export const cell: typeof english = {
  reading: 'Leyendo estudios, periodos y lotes …',
  trouble: (problem) => `No se pudo leer la célula: ${problem}`,
  tryAgain: 'Reintentar',
  tabsName: 'La célula',
  tabs: {
    governs: 'Qué manda',
    'what-if': '¿Y si …?',
    'lead-time': 'Tiempo de paso',
    people: 'Personas y máquinas',
  },
  empty: {
    title: 'La célula se calcula a partir de un estudio del trabajo',
    text: 'Cronometrar una pieza, elemento por elemento: qué hacen las manos con la máquina parada, qué hacen con la máquina en marcha, y la máquina misma.',
    go: 'A los estudios',
  },
  partial: (title, missing) => `${title} queda fuera: no se usa ninguna lectura de ${missing}.`,
  tooFew: (title, cycles) =>
    `${title} es más reciente, pero solo tiene ${wholeCycles(cycles)}: se usa un estudio anterior que tiene más.`,
  tooShort: (title) => `${title} queda fuera: su ciclo dura menos de un segundo.`,
  part: 'Pieza',
  noCode: 'sin código',
  allParts: 'Todas las piezas',
  list: (names) => {
    const last = names.at(-1) ?? '';
    return names.length < 2 ? last : `${names.slice(0, -1).join(', ')} ${andBefore(last)} ${last}`;
  },
  minutes: (figure) => `${figure} min`,
  percent: (figure) => `${figure}\u00a0%`,
  who: { operator: 'Persona', machine: 'Máquina', other: 'Otra persona' },
  whoNumbered: (who, number) => `${who} ${number}`,
};

/** Words that say what a part is reckoned from. */
export const cellSource: typeof englishSource = {
  study: (title) => `Del estudio «${title}»`,
  on: (day) => `del ${day}`,
  chosen: {
    newest: (of) => `, el más reciente de ${of}`,
    enough: (of, enough) =>
      `, de ${of} el más reciente que muestra cada elemento en al menos ${enough} ciclos`,
    most: (of, enough) => `, de ${of} el que tiene más ciclos completos: ninguno tiene ${enough}`,
  },
  cycles: wholeCycles,
  precision: (percent) => `, ciclo ± ${percent} %`,
  flagged: (count) =>
    `. ${count === 1 ? 'Una de sus lecturas merece' : `${count} de sus lecturas merecen`} una mirada allí; lo que nadie excluye indicando la causa cuenta aquí igual que en el estándar.`,
  thin: (part) =>
    `Demasiado pocos ciclos para fiarse de lo que sigue sobre ${part}: cronometrar al menos cinco.`,
  mix: (shares) =>
    `Según lo hecho en los periodos de trabajo más recientes: ${shares}. Aquí no se puede probar otra mezcla; sus piezas sí, una a una.`,
};

/** Words of the first page: who governs, and what to do next. */
export const cellGoverns: typeof englishGoverns = {
  next: {
    outside: (element) =>
      `Siguiente paso: acortar el trabajo manual con la máquina parada, empezando por «${element}».`,
    inside: (element) =>
      `Siguiente paso: acortar el trabajo manual con la máquina en marcha, empezando por «${element}».`,
    machine: () => 'Siguiente paso: hacer más rápida la máquina.',
    other: (element) => `Siguiente paso: aliviar a la otra persona, empezando por «${element}».`,
    hands: (element) => `Siguiente paso: acortar el trabajo manual, empezando por «${element}».`,
  },
  tooEarly: 'Aún es pronto para decir cuál es el siguiente paso.',
  hasCycles: (part, cycles) =>
    `${part}: ${cycles} ${cycles === 1 ? 'ciclo completo cronometrado' : 'ciclos completos cronometrados'}.`,
  needed: (cycles) => `Hacen falta ${cycles} de una pieza, con lectura de cada elemento.`,
  pays: {
    outside: 'Dónde compensa menos trabajo manual con la máquina parada:',
    inside: 'Dónde compensa menos trabajo manual con la máquina en marcha:',
    machine: 'Dónde compensa una máquina más rápida:',
    other: 'Dónde compensa aliviar a la otra persona:',
    hands: 'Dónde compensa menos trabajo manual:',
  },
  equalMix: 'Calculado con tantas piezas de una como de otra: ningún periodo de trabajo muestra otra mezcla.',
  onEvery: 'en todas las piezas',
  onNone: 'en ninguna pieza',
  fully: (parts) => `en ${parts}`,
  partly: (parts) => `algo menos en ${parts}`,
  notOn: (parts) => `no en ${parts}`,
  why: {
    most: (first, second) =>
      `Un segundo menos de «${first}» da ${second} piezas buenas más al día: ningún elemento da más, y entre los que dan lo mismo es el que más dura.`,
    ofItsKind: (first, second) =>
      `Un segundo menos de «${first}» da ${second} piezas buenas más al día; entre los de su clase que dan lo mismo es el que más dura.`,
    byTenth: ({ name, tenth, second, firstTenth }) =>
      `En proporción gana «${name}»: un 10 % menos da ${tenth} en lugar de ${firstTenth}; un segundo menos da ${second}. Donde se pueda ahorrar la misma proporción en ambos, empezar por ahí.`,
    byTenthToo: (tenth) => `Un 10 % menos da ${tenth}, también lo máximo.`,
  },
  partsTitle: 'Cada pieza de esta célula',
  minutesPart: 'min por pieza, sin paradas',
  goodDay: 'piezas buenas al día',
  dayIs: (hours) => `${hours} h, sin suplementos`,
  governs: 'manda',
  second: '1 segundo menos de ello: segundos ganados por pieza',
  kinds: {
    outside: 'manual, máquina parada',
    inside: 'manual, máquina en marcha',
    machine: 'máquina',
    other: 'otra persona',
  },
  tableNote:
    'Minutos sin paradas. Piezas buenas al día si se hace esta pieza todo el día; simuladas, con paradas, retrabajo y trabajo ocasional.',
  governors: {
    hands: 'trabajo manual',
    machine: 'máquina',
    tie: 'ambos, alternándose',
    other: 'otra persona',
  },
  detail: {
    hands: (code, count, of) =>
      `${code}: manda el trabajo manual. En ${count} de ${of} ciclos cronometrados la máquina lo esperó.`,
    machine: (code, count, of) =>
      `${code}: manda la máquina. En ${count} de ${of} ciclos cronometrados la persona la esperó.`,
    tie: (code, count, of) =>
      `${code}: trabajo manual y máquina mandan alternándose. La máquina tardó más en ${count} de ${of} ciclos cronometrados.`,
    other: (code) => `${code}: manda la otra persona; la persona del puesto y la máquina esperan.`,
    alone: (code) => `${code}: no hay máquina, así que manda el trabajo manual.`,
    mix: (hands) => `Todas las piezas: en el ${hands} % de los ciclos la máquina espera al trabajo manual.`,
  },
  tieLoss: (minutes) =>
    `Esperarse mutuamente, ahora uno y ahora otro, cuesta ${minutes} por pieza; ninguna media lo muestra.`,
  takeover: (pace) =>
    `Por encima de un ritmo de ${pace}, la máquina tarda más que el trabajo manual a su lado: quien va más rápido, ahí solo espera.`,
  chart: 'Un ciclo: quién trabaja, quién espera',
  chartSays: (lanes) => `El tiempo corre hacia abajo. ${lanes}`,
  laneSays: (who, works, waits) => `${who}: trabaja ${works}, espera ${waits}.`,
  works: 'trabaja',
  loaded: 'se carga',
  waits: 'espera a otros',
  use: 'ocupación',
  cycle: (minutes, parts) =>
    `${parts === 1 ? 'Ciclo' : `Ronda de ${parts} piezas`} según las medias: ${minutes}, sin trabajo ocasional`,
  starts: (element) =>
    `La máquina arranca cuando termina el último trabajo manual con la máquina parada: aquí, con el final de «${element}».`,
  noChart: 'Elegir arriba una pieza para ver su ciclo: quién trabaja, quién espera.',
  legend: { working: 'trabaja', attending: 'tiene que vigilar', waiting: 'espera' },
  effects: (part) => `${part}: qué da acortar un elemento`,
  element: 'elemento',
  more: 'piezas buenas más al día',
  secondLess: '1 s menos',
  tenthLess: '10 % menos',
  effectsNote:
    'Primero está lo que más da por segundo; donde un segundo cuenta igual, lo que más da con un 10 %. Un segundo de trabajo ocasional solo se ahorra cuando este viene.',
  none: 'ninguna',
  ends: {
    inside: (parts) =>
      `Acortar el trabajo manual con la máquina en marcha da hasta ${parts} más al día; entonces manda la máquina, y seguir acortando no da nada.`,
    machine: (parts) =>
      `Una máquina más rápida da hasta ${parts} más al día; entonces manda el trabajo manual, y más rapidez no da nada.`,
  },
  goodParts: (figure) => `${figure} ${figure === '1' ? 'pieza buena' : 'piezas buenas'}`,
  how: 'Cómo se calcula',
  howText: [
    'Cada ciclo cronometrado se toma entero: trabajo manual con la máquina parada + lo más largo entre el trabajo manual a su lado y la máquina; después, la media de todos los ciclos. Los tiempos son tiempos normales: observado × valoración.',
    'La media de lo más largo de cada ciclo está por encima de la más larga de las dos medias: esa diferencia es lo que cuesta alternarse.',
    'El trabajo ocasional cuenta con su frecuencia; hecho junto a la máquina en marcha, cuenta solo en lo que dura más que ella.',
    '1 segundo menos: el ciclo medio otra vez, con un segundo menos de ese trabajo en cada ciclo. Se dice que compensa desde 0,75, y que no compensa por debajo de 0,05. Muestra quién manda: en proporción, un elemento largo sería el primero incluso donde solo se le espera.',
    '10 % menos: el tiempo por pieza otra vez, con ese elemento un 10 % más corto en cada ciclo, aplicado a las piezas buenas al día. Piezas buenas por segundo: los segundos ganados, aplicados al tiempo por pieza.',
    'Ritmo a partir del cual manda la máquina: 100 × tiempo manual a su lado ÷ tiempo de máquina.',
    'Fuente: Groover, Work Systems, capítulo 13.',
  ],
  day: (hours, days) =>
    `Un día tiene ${hours} horas de trabajo: ${days === 1 ? 'las del día más reciente' : `la media de los ${days} días más recientes`} con periodos de trabajo.`,
  assumedDay: (hours) =>
    `Se supone un día de ${hours} horas de trabajo y sin paradas hasta que se registren periodos de trabajo.`,
};
