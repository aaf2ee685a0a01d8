import type { turnQuestion as english } from '../en/turn-question';
import { clockFace } from '../format-duration';
import { roundedClockFace } from '../rounded-clock-face';

/** Words of the questions beside the figures, and of those that take their place. */
export const turnQuestion: typeof english = {
  outcomeTitle: (ms) => `Pieza anterior, ${roundedClockFace(ms)}: ¿cómo está?`,
  undoTitle: (what, ms) => `Hace ${clockFace(ms)}: ${what}. ¿Deshacer?`,
  undoYes: 'Deshacer',
  undoNo: 'Dejarlo',
  undoNote: 'El toque queda en los registros, y también que se deshizo.',
  firstOff: 'Primera pieza: preparación',
  reasonTitle: '¿Por qué? Es voluntario',
  reasonTitleAfter: (ms) => `Parada ${clockFace(ms)}: ¿por qué?`,
  gapTitle: (ms) => `Sin trabajo durante ${roundedClockFace(ms)}: ¿qué fue?`,
  sayWhy: (ms) => `Parada ${clockFace(ms)} – indicar motivo`,
  saidWhy: (ms, why) => `Parada ${clockFace(ms)}: ${why}`,
  sayWhat: (ms, to) => `${roundedClockFace(ms)} antes de ${to} – ¿qué fue?`,
  openCount: (count) => `${count} sin aclarar, la última primero:`,
  answered: (word, left) => (left === 0 ? `Respondido: ${word}` : `Respondido: ${word}. Quedan ${left}`),
};
