import { decimalMinutes } from '../decimal-time';
import type { turnSetup as english } from '../en/turn-setup';
import { roundedClockFace } from '../rounded-clock-face';

/** Words of the screen before a turn: who, which part, and what anyone should know first. */
export const turnSetup: typeof english = {
  startTitle: 'Empezar un periodo',
  who: '¿Quién está en el puesto?',
  whoHint: 'Un código o iniciales. No hace falta el nombre completo.',
  personCode: 'Código',
  addPerson: 'Añadir código',
  anotherPerson: 'Otro código',
  whichPart: '¿Qué pieza?',
  partCode: 'Código de la pieza',
  partName: 'Nombre, si lo tiene',
  target: 'Objetivo para una pieza (opcional)',
  targetHint: 'Minutos y segundos como 1:48, o minutos decimales como 1,8',
  targetEquals: (ms) => `= ${roundedClockFace(ms)}`,
  targetMinutes: (ms) => `para una pieza, ${decimalMinutes(ms)} min`,
  targetFaults: {
    empty: '',
    'not-a-time': 'Esto no es un tiempo. Escribir 1:48, 0:06 o 1,8.',
    'over-59': 'Los segundos y los minutos llegan aquí hasta 59.',
    'too-short': 'Un objetivo es de un segundo como mínimo.',
    'too-long': 'Un objetivo es de un día como máximo.',
  },
  addPart: 'Añadir pieza',
  anotherPart: 'Otra pieza',
  cancel: 'Cancelar',
  codeTaken: (code, target) => `${code} ya existe, ${target}: se cambia en Taller.`,
  codeIsFull: (most) => `Un código tiene como máximo ${most} caracteres: no caben más.`,
  needsCode: 'Una pieza necesita un código.',
  targetInShop: 'El objetivo se pone en Taller, con el PIN de supervisión. La pieza se puede hacer sin él.',
  lastTurn: 'último periodo',
  madeLast: 'última hecha',
  lookBack: (person, from, to) => `Ver el último registro: ${person}, de ${from} a ${to}`,
  targetOf: (ms) => (ms === null ? 'sin objetivo' : `objetivo ${roundedClockFace(ms)}`),
  start: 'Empezar',
  chooseBoth: 'Elegir quién y qué pieza',
  choosePerson: 'Elegir quién está en el puesto',
  choosePart: 'Elegir una pieza',
  startWith: (person, part, target) => `${person} · ${part} · ${target}`,
  demoLine: '¿Solo mirar?',
  openDemo: 'Abrir el taller de ejemplo',

  // Cautions.
  cautionTitle: 'Antes del primer periodo',
  cautionAgain: 'Seguridad y trato justo',
  cautions: [
    'Este cronómetro no es un dispositivo de seguridad. Montarlo fuera de los resguardos y del alcance del peligro, y no tocar nunca con una mano en la zona de peligro.',
    'Parar la máquina y bloquearla antes de quitar un atasco o cambiar una herramienta. Ese tiempo no se le reprocha a nadie.',
    'Las normas y acuerdos locales y el criterio de profesionales autorizados van por delante de todo lo que aquí se muestra.',
    'Ningún objetivo exige renunciar al descanso, al agua o al baño. Parar no necesita motivo. Trabajar más deprisa carga el cuerpo.',
    'Preguntar por las zonas de polvo y vapores antes de llevar allí una tableta.',
    'Inspeccionar, limpiar y los controles de seguridad son parte del trabajo: un objetivo que no deja tiempo para ello está mal.',
    'Quien aprende, está en embarazo, con tareas limitadas o vuelve de una lesión solo tiene el objetivo que se acuerde para su caso.',
  ],
};
