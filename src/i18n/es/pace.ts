import type { pace as english } from '../en/pace';
import { clockFace } from '../format-duration';
import { formatNumber } from '../format-number';
import { roundedClockFace } from '../rounded-clock-face';

/** Words of the operator's screen. */
export const pace: typeof english = {
  turnHeading: (person, part) => `${person} · ${part}`,
  partDone: (together) => (together === 1 ? 'Pieza terminada' : `${together} piezas terminadas`),
  beginPart: 'Empezar pieza',
  beginHint: 'Tocar al poner las manos en la pieza',
  elementOf: (place, count) => `termina aquí · ${place} de ${count}`,
  goOn: 'Seguir',
  stop: 'Parar',
  stoppedState: 'Parado',
  reworkState: 'Retrabajo',
  lastPart: (ms) => `Pieza anterior ${roundedClockFace(ms)}`,
  secondTapNote: 'Justo tras el toque anterior: por ahora no cuenta',
  tapHint: 'Un toque por pieza, siempre en el mismo momento',
  goOnHint: 'Con este toque sigue el trabajo',
  reworkDone: 'Retrabajo terminado',
  reworkDoneHint: 'La pieza está buena y sigue el trabajo',
  thisPart: 'Esta pieza',
  stopClock: 'Tiempo de parada',
  reworking: 'Tiempo de retrabajo',
  partSoFar: (ms) => `Esta pieza lleva ${clockFace(ms)}`,
  targetWords: { none: 'Objetivo', typed: 'Objetivo', standard: 'Tiempo estándar', takt: 'Takt' },
  noTarget: 'Sin objetivo',
  over: 'exceso',
  turnSoFar: 'Periodo hasta ahora, sin paradas',
  planLabel: 'Con paradas',
  position: {
    ahead: (ms) => `${wholeSeconds(ms)} por delante`,
    behind: (ms) => `${wholeSeconds(-ms)} por detrás`,
    level: 'a la par',
  },
  // A decimal number takes the plural, 1,0 too.
  parts: (parts) => `= ${formatNumber(Math.abs(parts), 1)} piezas ${parts < 0 ? 'detrás' : 'delante'}`,
  learning: 'Aprendizaje: no se lleva la posición',
  breakUntil: (time) => `Pausa hasta las ${time}: la posición no cambia`,
  noPosition: 'Sin objetivo no hay posición',
  doneCount: (count) => (count === 1 ? 'terminada' : 'terminadas'),
  average: 'media de esta pieza',
  averageOf: (n, done) => (n === done ? `(${n})` : `(${n} de ${done})`),
  averageNone: 'aún sin media de esta pieza',
  undo: 'Deshacer',
  undoWhat: {
    'part-begun': 'inicio de pieza',
    'element-done': 'fin de elemento',
    'part-done': (ms) => `pieza de ${roundedClockFace(ms)}`,
    'part-changed': 'cambio de pieza',
    'person-changed': 'cambio de persona',
    stopped: '«Parar»',
    resumed: '«Seguir»',
    rework: { stopped: 'inicio del retrabajo', resumed: 'fin del retrabajo' },
    answer: 'respuesta',
  },
  takenBack: (what) => `Se deshizo: ${what}`,
  changePart: 'Cambiar pieza',
  endTurn: 'Terminar periodo',
  orHandOver: 'o relevo',
  lastPartIs: 'Pieza anterior',
  outcomes: { good: 'Buena', rework: 'Retrabajo', scrap: 'Desecho' },
  toRework: (count) => `${count} ${count === 1 ? 'retrabajo' : 'retrabajos'}`,
  changeTitle: '¿Qué pieza desde ahora?',
  back: 'Volver',
  screenMaySleep: 'La pantalla puede apagarse',
  announceDone: (count, ms) => `Pieza ${count} terminada, ${roundedClockFace(ms)}`,
  announceGoing: 'Sigue el trabajo',
  announceReworked: (ms) => `Retrabajo terminado, ${clockFace(ms)}`,
  announceBegun: 'Pieza empezada',
};

/** A position moves while it is read: whole seconds. */
function wholeSeconds(ms: number): string {
  return clockFace(Math.round(ms / 1_000) * 1_000);
}
