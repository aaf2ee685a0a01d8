import type { enterTurn as english } from '../en/enter-turn';
import { formatNumber } from '../format-number';

const parts = (count: number) => `${count} ${count === 1 ? 'pieza' : 'piezas'}`;
/** A participle or adjective beside that many parts. */
const so = (count: number, word: string) => (count === 1 ? word : `${word}s`);

/** Words of a turn that is written down afterwards, and of how far a day's taps can be trusted. */
export const enterTurn: typeof english = {
  title: 'Anotar un periodo sin toques',
  open: 'Anotar un periodo',
  note: 'Sus piezas y su tiempo cuentan. No se conoce el tiempo de ninguna pieza suelta; por eso ninguno entra en una media ni en un estudio.',
  person: '¿De quién es el periodo?',
  day: 'Día',
  from: 'Desde',
  to: 'Hasta',
  part: (place) => `Pieza ${place}`,
  done: (place) => `Terminadas, pieza ${place}`,
  rework: (place) => `de ellas retrabajadas, pieza ${place}`,
  scrap: (place) => `de ellas desecho, pieza ${place}`,
  short: { part: 'Pieza', done: 'Terminadas', rework: 'Retrabajadas', scrap: 'Desecho' },
  addPart: 'Otra pieza',
  stopped: (reason) => `Minutos de parada: ${reason}`,
  stoppedTitle: 'Minutos de parada, si se conocen',
  enter: 'Anotarlo',
  next: 'Siguiente',
  cancel: 'Cancelar',
  choosePart: 'Elegir',
  willWrite: 'Se va a anotar esto:',
  span: (person, day, from, to, length) => `${person}, ${day}, de ${from} a ${to}: ${length}`,
  made: (part, done, rework, scrap) =>
    `${done} × ${part}${rework > 0 ? `, ${rework} de ellas retrabajadas` : ''}${scrap > 0 ? `, ${scrap} de ellas desecho` : ''}`,
  stoppedFor: (reason, minutes) => `${reason}: ${minutes} min`,
  noStops: 'No se indica ninguna parada: no se sabe qué se perdió.',
  entered: (day) => `El periodo queda anotado el ${day} y marcado como anotado después.`,
  meals: (minutes) => `Se descuentan ${minutes} min de comida, según el calendario.`,
  doneNote: 'Terminadas son todas: también las retrabajadas y las desechadas.',
  beside: (from, to) =>
    `Ya hay otro periodo registrado de ${from} a ${to}. Seguir si este se trabajó al mismo tiempo.`,
  faults: {
    inTheWay: (code, from, to) =>
      `${code} ya tiene un periodo de ${from} a ${to}, y nadie está en dos a la vez. No se ha cambiado nada.`,
    person: 'Falta un código. No se ha cambiado nada.',
    times:
      'Hacen falta el día y las dos horas; el periodo debe haber terminado y durar un día como mucho. No se ha cambiado nada.',
    whichPart: 'Elegir de qué pieza es la cantidad. No se ha cambiado nada.',
    parts:
      'Al menos una pieza, en números enteros; retrabajadas y desecho no pueden sumar más que las terminadas. No se ha cambiado nada.',
    stops:
      'Los minutos de parada son números enteros y no suman más de lo que dura el periodo. No se ha cambiado nada.',
  },

  trust: 'Hasta dónde llegan los toques',
  capture: (tapped, counted, share) =>
    `${parts(tapped)} con toque, de ${counted} ${so(counted, 'contada')} a mano: ${formatNumber(share * 100)} %.`,
  partial: 'Incompleto: las medias hablan solo de una parte del trabajo.',
  enteredShare: (entered, done) =>
    `${entered} de ${parts(done)} ${entered === 1 ? 'se anotó después y no entra' : 'se anotaron después y no entran'} en ninguna media.`,
  learning: (count) => `${parts(count)} ${so(count, 'hecha')} durante el aprendizaje, fuera de las medias.`,
  shared: (count) =>
    `${parts(count)} ${so(count, 'hecha')} entre dos personas, fuera de las cifras propias de cada una.`,
};
