import type { putRight as english } from '../en/put-right';
import { roundedClockFace } from '../rounded-clock-face';

/** What is acted on, as the object of a sentence. */
const them = (count: number) => (count === 1 ? 'la pieza' : `${count} piezas`);

/** Words of what a person puts right without being asked. */
export const putRight: typeof english = {
  title: 'Corregir otra cosa',
  note: 'No se borra nada: lo registrado queda, y lo corregido figura al lado, con quién, y por qué si no lo dice por sí mismo.',
  turn: '¿Qué periodo?',
  /** Whose turn it was is not shown. */
  turnLine: (from, parts) => `${from}, ${parts} ${parts === 1 ? 'pieza' : 'piezas'}`,

  whats: {
    parts: 'Piezas',
    person: 'Persona',
    time: 'Un tramo de tiempo',
    count: 'Recuento anotado aparte',
    away: 'Retirar este periodo',
  },
  fromPart: 'Desde la pieza',
  toPart: 'hasta la pieza',
  partLine: (at, code, ms) => `${at} · ${code} · ${roundedClockFace(ms)}`,
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
  putAs: (from, to, what) => `De ${from} a ${to}, registrar como ${what}`,
  giveTo: (from, to, code) => `De ${from} a ${to}, asignar a ${code}`,
  onRecord: (code) => `${code} ✓ registrado`,
  awayNote:
    'El periodo y sus piezas ya no cuentan. Queda en el historial, con quién lo anotó y quién lo retiró.',
  taken: 'El periodo se ha retirado.',

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
