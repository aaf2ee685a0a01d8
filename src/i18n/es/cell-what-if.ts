import type { cellWhatIf as english } from '../en/cell-what-if';

/** How often something comes: with every part, or once in so many. */
const onceIn = (parts: number) => (parts === 1 ? 'con cada pieza' : `una vez cada ${parts} piezas`);

/** Words of the page that tries changes. */
export const cellWhatIf: typeof english = {
  title: '¿Qué cambiaría la célula?',
  begin: 'Cambiar algo: aquí se dice qué efecto tiene.',
  reset: 'Como está ahora',
  work: 'Trabajo',
  lots: 'Lotes',
  speed: 'Velocidad de máquina',
  fixed: 'Minutos de máquina que la velocidad no cambia',
  passes: 'Pasadas',
  loading: 'Tiempo de carga',
  element: 'Un elemento',
  elementTime: 'Tiempo de ese elemento',
  done: 'Se hace',
  places: {
    external: 'con la máquina parada',
    internal: 'con la máquina en marcha',
    other: 'por otra persona',
  },
  byOperator: 'por la persona del puesto',
  machines: 'Máquinas',
  buffer: 'Sitios antes de la otra persona',
  arrivalLot: 'Piezas que llegan juntas',
  refillAt: 'Piezas que quedan cuando llegan',
  trolley: 'Piezas que salen juntas',
  people: 'Personas',
  of: (what, value) => `${what}: ${value}`,
  takeBack: (change) => `Deshacer: ${change}`,
  less: (what) => `${what}: menos`,
  more: (what) => `${what}: más`,
  faster: (minutes, parts) => `${minutes} menos por pieza: ${parts} piezas más al día.`,
  slower: (minutes, parts) => `${minutes} más por pieza: ${parts} piezas menos al día.`,
  noneShown: {
    faster: (minutes, difference) =>
      `${minutes} menos por pieza, pero sin diferencia demostrada en piezas buenas al día: ${difference}.`,
    slower: (minutes, difference) =>
      `${minutes} más por pieza, pero sin diferencia demostrada en piezas buenas al día: ${difference}.`,
  },
  noEffect: {
    hands: 'Sin efecto en el ritmo, porque manda el trabajo manual: la máquina ya lo espera.',
    machine: 'Sin efecto en el ritmo, porque manda la máquina: la persona ya la espera.',
    tie: 'Sin efecto en el ritmo: lo que se ahorra se va en esperas.',
    other: 'Sin efecto en el ritmo, porque manda la otra persona: el resto de la célula ya espera.',
  },
  lotsOnly: 'El ritmo queda igual: los lotes cambian cuánto esperan las piezas, no el trabajo.',
  waiting: {
    faster: (parts) => `${parts} piezas más al día: las dos personas se esperan menos.`,
    slower: (parts) => `${parts} piezas menos al día: las dos personas se esperan más.`,
  },
  alone: 'Sin efecto en el ritmo: el trabajo sigue siendo el mismo.',
  exchange: {
    faster: (parts, { name, every, before }) =>
      `${parts} piezas más al día, porque «${name}» viene ${onceIn(every)} en lugar de ${onceIn(before)}.`,
    slower: (parts, { name, every, before }) =>
      `${parts} piezas menos al día, porque «${name}» viene ${onceIn(every)} en lugar de ${onceIn(before)}.`,
  },
  tookOver: {
    faster: {
      hands: 'Desde aquí manda el trabajo manual: una máquina aún más rápida no da nada.',
      machine: 'Desde aquí manda la máquina: un trabajo manual aún más rápido a su lado no da nada.',
      tie: 'Desde aquí trabajo manual y máquina mandan alternándose: más de uno de los dos da menos.',
      other: 'Desde aquí manda la otra persona.',
    },
    slower: {
      hands: 'Ahora manda el trabajo manual.',
      machine: 'Ahora manda la máquina.',
      tie: 'Ahora trabajo manual y máquina mandan alternándose.',
      other: 'Ahora manda la otra persona.',
    },
  },
  leadTime: (now, then) => `Una pieza está ${then} en la célula en lugar de ${now}.`,
  present: 'ahora',
  proposed: 'después',
  difference: 'diferencia',
  rows: {
    minutes: 'Minutos por pieza, sin paradas',
    perDay: 'Piezas buenas al día',
    promise: 'se cumple 9 de cada 10 días',
    lead: 'Tiempo de paso, media en min',
    leadHigh: 'Tiempo de paso, 9 de 10 hasta, min',
    inside: 'Piezas dentro',
    people: 'Personas',
    personHour: 'Piezas buenas por hora-persona',
    machine: 'Máquina en marcha, parte del día',
  },
  interval: (difference, half) => `${difference} ± ${half}`,
  notShown: 'ninguna demostrada',
  isNotShown: (difference) => `${difference}, ninguna demostrada`,
  simulated: (days, seed) =>
    `${days} días simulados con los ciclos y las paradas del propio taller, semilla ${seed}, el mismo azar para ambos.`,
  anotherSeed: 'Otro azar',
  longRun: (days) => `Simular ${days} días`,
  progress: (done, days) => `${done} de ${days} días`,
  stop: 'Parar aquí',
  daysTitle: 'Piezas buenas al día',
  daysSay: (low, median, high) =>
    `Un día de cada diez tiene menos de ${low}; la mitad, más de ${median}; uno de cada diez, más de ${high}.`,
  median: 'mitad',
  p10: '1 de 10 bajo',
  p90: '1 de 10 sobre',
  chartNow: 'El ciclo ahora',
  chartThen: 'El ciclo después',
  how: [
    'Cada pieza simulada toma los tiempos de un ciclo cronometrado, sacado al azar; donde un ciclo se parece al anterior, se sacan series cortas. Las paradas, los desechos y los retrabajos vienen tan a menudo y duran tanto como en los periodos de trabajo más recientes; una pieza retrabajada ocupa las manos otra vez el tiempo de una pieza.',
    'Los minutos por pieza son sin paradas, retrabajo ni desecho; todo lo demás de la tabla los incluye.',
    'Una parada por un motivo que detiene la máquina, según lo indicado por el taller en «Personas y máquinas», detiene la máquina; cualquier otra, a la persona, y la máquina termina mientras tanto su ciclo.',
    'Con el toque llega lo que dicen diez días de azar; todos los días siguen un momento después.',
    'El trabajo ocasional que viene una vez por carro viene tan a menudo como sale el carro.',
    'Ahora y después encuentran el mismo azar, para que la diferencia tenga un intervalo estrecho: diferencia media por días ± t·s/√n, al 95 %. Un tiempo de paso cuenta el día en que su pieza queda libre.',
    'Tiempo de máquina después = lo que la velocidad no cambia + (el resto) × pasadas ÷ velocidad.',
    'En veinte células al azar, la simulación da los mismos resultados que un paquete independiente (SimPy), y los exactos de la teoría de colas.',
  ],
};
