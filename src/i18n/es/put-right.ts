import type { putRight as english } from '../en/put-right';

/** What is acted on, as the object of a sentence. */
const them = (count: number) => (count === 1 ? 'la pieza' : `${count} piezas`);

/** Words of what a person puts right without being asked. */
export const putRight: typeof english = {
  title: 'Corregir otra cosa',
  note: 'No se borra nada y todo se puede retirar: lo corregido figura junto a lo registrado, con quién y por qué.',
  turn: '¿Qué periodo?',
  turnLine: (from, parts) => `${from}, ${parts} ${parts === 1 ? 'pieza' : 'piezas'}`,

  whats: {
    parts: 'Piezas',
    person: 'Persona',
    time: 'Un paro o un tramo de tiempo',
    count: 'Recuento anotado aparte',
    away: 'Retirar este periodo',
    back: 'Retirar una corrección',
  },
  fromPart: 'Desde la pieza',
  toPart: 'hasta la pieza',
  howMany: (count) => (count === 1 ? 'Esta pieza:' : `Estas ${count} piezas:`),
  mark: (count, as) => `Marcar ${them(count)}: ${as}`,
  good: 'Buena',
  rework: 'Retrabajada',
  scrap: 'Desecho',
  wasTwo: 'Eran dos piezas',
  wasNone: 'No fue ninguna pieza',
  setAside: 'Fuera de las medias',
  setAsideAll: (count) => `Dejar ${them(count)} fuera de las medias`,
  takeBack: 'De vuelta a las medias',
  takeBackAll: (count) => `Devolver ${them(count)} a las medias`,
  changeTo: (code) => `Cambiar a ${code}`,
  changeAll: (count, code) => `Cambiar ${them(count)} a ${code}`,
  putAs: (from, to, long, what) => `De ${from} a ${to} (${long}): ${what}`,
  onRecord: (code) => `${code} ✓ registrado`,
  awayNote: 'El periodo y sus piezas ya no cuentan; en el historial queda todo.',
  taken: 'El periodo se ha retirado.',

  stop: '¿Qué paro?',
  noneBack: 'Todavía nada.',
  from: 'Desde',
  to: 'Hasta',
  was: 'Fue …',
  work: 'Trabajo en piezas',
  whose: '¿Quién estaba en ese tiempo?',
  missing: 'Indicar las dos horas, una tras otra y dentro del periodo. No se ha cambiado nada.',
  counted: 'Piezas contadas a mano',
  keepCount: 'Guardar el recuento',
  countNote: (tapped) =>
    `Se ${tapped === 1 ? 'tocó' : 'tocaron'} ${tapped}. El recuento queda al lado y no crea piezas: donde faltó un toque, indicar en «Piezas» qué pieza valía por dos.`,
  countKept: 'El recuento queda guardado junto a los toques.',
  said: (what) => `Corregido: ${what}.`,
};
