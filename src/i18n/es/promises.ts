import type { promisesWords as english } from '../en/promises';

const days = (count: number) => (count === 1 ? 'un día' : `${count} días`);

/** Words of capacity, people needed, and quotations. */
export const promisesWords: typeof english = {
  sentence: (promise, kept, count, reached, of) =>
    `Se pueden prometer ${promise} piezas buenas al día con una mezcla corriente: según ${days(count)}, ${kept} dan esa cantidad o más. De los ${of} días en total, incluidos los duros y los fáciles, lo lograron ${reached}`,
  inWords: {
    '0.8': 'ocho de cada diez días corrientes',
    '0.9': 'nueve de cada diez días corrientes',
    '0.95': 'diecinueve de cada veinte días corrientes',
  },
  tooFew: (count) =>
    `Lo que puede dar un día se dice a partir de cinco días corrientes; hasta ahora ${count === 0 ? 'no hay ninguno' : `hay ${count === 1 ? 'uno' : count}`}`,
  basis: (count, of, worked) =>
    `De ${days(count)} con mezcla corriente, de ${of} leídos: ${worked} (media, t de Student, desviación estándar). La media solo se cumple uno de cada dos días.`,
  keptLabel: 'Se cumple',
  keptOn: { '0.8': '8 de 10 días', '0.9': '9 de 10 días', '0.95': '19 de 20 días' },
  tries: 'Otra promesa:',
  triesResult: (kept, of) => `se habría cumplido ${kept} de ${of} días, duros y fáciles incluidos.`,
  people: {
    title: 'Personas necesarias',
    quantity: (part) => `${part}, piezas`,
    hours: 'Horas que cada persona tiene para ello',
    efficiency: 'Eficiencia, %',
    result: (load, people) => `${load} personas antes de redondear: ${people}.`,
    whole: (count) => (count === 1 ? 'una persona' : `${count} personas`),
    notAbove: 'Las horas y la eficiencia son números mayores que 0.',
    targetPace: 'Al ritmo del objetivo: aún no se conoce la eficiencia.',
    note: '(Σ piezas × objetivo + preparaciones) ÷ (horas × eficiencia). Ya puestos: el pedido de arriba, y un turno según el calendario sin su comida.',
  },
  quote: {
    title: 'Oferta',
    part: 'Pieza',
    quantity: 'Piezas',
    setUps: 'Preparaciones',
    note: 'Para quién, o para qué',
    freeFrom: 'Libre desde',
    people: 'Personas en ello',
    until: '¿Cuántas para este día?',
    countBy: (day, parts, part, isExpected) =>
      `Para el ${day}: ${isExpected ? 'se pueden esperar' : 'al ritmo del objetivo,'} ${parts} × ${part}.`,
    countRange: (low, high) => `${low} si va lento, ${high} si va bien (95 %).`,
    countWorking: (attended, efficiency, setUps, perPart) =>
      `(${attended} de presencia hasta entonces, de todas las personas${efficiency === null ? '' : `, × ${efficiency} % de eficiencia`}${setUps === null ? '' : ` − ${setUps} de preparaciones`}) ÷ ${perPart} s por pieza, piezas enteras.`,
    noTimeUntil: 'Según el calendario nadie trabaja hasta entonces, o el día queda demasiado lejos.',
    due: (day, people) =>
      `Terminado el ${day} con ${people === '1' ? 'una persona' : `${people} personas`} en ello.`,
    latest: (day) => `El ${day} si va lento.`,
    calendar: (hours) => `${hours} por persona y día según el calendario; no incluye otros pedidos.`,
    noCalendar: 'En Taller no hay turnos: 8 h por persona de lunes a viernes; no incluye otros pedidos.',
    todayLeft: (hours) => `De hoy cuentan las ${hours} que quedan.`,
    todayGone: 'De hoy no cuenta nada.',
    range: (low, high) => `(de ${low} a ${high})`,
    dueLine: (day, latest) =>
      day === latest ? `terminado el ${day}` : `terminado el ${day}; si va lento, el ${latest}`,
    result: (total, quantity, part) => `${quantity} × ${part}: ${total} de presencia`,
    interval: (low, high, count) => `Entre ${low} y ${high} (95 %), según la eficiencia de ${days(count)}.`,
    noInterval: (gave, count) =>
      `Al ritmo del objetivo: eficiencia e intervalo piden cinco días con objetivos.${count > 0 ? ` Hasta ahora, ${days(count)}: ${gave}\u00a0%.` : ''}`,
    standard: (perPart, setUp, source) =>
      `${perPart} por pieza, ${setUp === null ? 'nada fijado para una preparación' : `${setUp} por preparación`}. ${source}`,
    sources: {
      typed: 'El tiempo de una pieza es su objetivo; no se ha emitido un tiempo estándar para ella.',
      standard: 'El tiempo de una pieza es su tiempo estándar.',
      size: 'El tiempo de este tamaño se escribió a mano, como lo dan los datos tipo.',
    },
    faults: {
      quantity: 'Las piezas son un número entero desde 1.',
      setUps: 'Las preparaciones son un número entero, o 0: no se cuenta ninguna.',
      people: 'Las personas son un número mayor que 0: no se dice ningún día.',
    },
    anotherSize: 'Otro tamaño',
    sizeCode: 'Tamaño',
    sizeTime: 'Tiempo estándar de una pieza, m:ss',
    sizeHalf: 'Más o menos, m:ss (puede quedar vacío)',
    sizeNote: 'Los datos tipo, en Estudio, dan el tiempo de un tamaño y cuánto puede desviarse.',
    notATime: 'No es un tiempo: escribirlo como 1:30.',
    revision: (revision) => `Método, revisión ${revision}.`,
    noRevision: 'No hay método escrito para esta pieza.',
    save: 'Anotar la oferta',
    given: 'Ofertas hechas',
    none: 'Ninguna todavía.',
    line: (day, quantity, part, total) => `${day}: ${quantity} × ${part}, ${total}`,
    overhauled: 'El estándar en que se basa cambió desde entonces: hacer otra oferta.',
    stands: 'El estándar en que se basa sigue vigente.',
  },
  setUp: {
    title: 'Lo que gana una preparación',
    now: (time) => `${time} por cada preparación`,
    none: 'No hay nada fijado: las preparaciones no ganan tiempo, y la eficiencia las cuenta como si fueran tiempo perdido.',
    label: 'Tiempo estándar de una preparación, m:ss',
    save: 'Fijarlo desde ahora',
    note: 'Lo pasado conserva el tiempo que valía entonces.',
  },
  hours: (hours) => `${hours}\u00a0h`,
};
