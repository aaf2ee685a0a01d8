import type { turnQuestion as english } from '../en/turn-question';
import { clockFace } from '../format-duration';
import { roundedClockFace } from '../rounded-clock-face';

/** Words of the questions beside the figures, and of those that take their place. */
export const turnQuestion: typeof english = {
  outcomeTitle: (ms) => `Pieza anterior, ${roundedClockFace(ms)}: ¿cómo está?`,
  undoTitle: (what, ms) => `Hace ${clockFace(ms)}: ${what}. ¿Deshacer?`,
  undoYes: 'Deshacer',
  undoNo: 'Dejarlo',
  undoNote: 'El toque y el deshacer quedan en los registros.',
  stopInIt: 'Hubo una parada',
  stopInItSaid: 'Hubo una parada: no entra en ninguna media',
  allWorkSaid: 'Todo fue trabajo',
  firstOff: 'Primera pieza: preparación',
  scrapSaid: 'Desecho: no gana objetivo',
  reworkSaid: 'Por retrabajar: espera en «Pieza anterior»',
  reworkNow: 'Retrabajar ahora',
  reworkLater: 'Retrabajar luego',
  reworkBegun: 'Retrabajo empezado: tocar cuando esté buena',
  waitingPart: (code, at, ms) => `Retrabajar ${code} de las ${at}, ${roundedClockFace(ms)}`,
  reworking: (code, at) => `Retrabajo de ${code}, terminada a las ${at}`,
  reworkingNote: 'Sigue siendo una pieza. Este tiempo es su retrabajo y no entra en ninguna media.',
  reworkFailed: 'Al final es desecho',
  tally: (scrap, marked, waiting, shared) =>
    [
      scrap > 0 && `${scrap} ${scrap === 1 ? 'desecho' : 'desechos'}`,
      waiting > 0 && `${waiting} por retrabajar`,
      marked > waiting && `${marked - waiting} ${marked - waiting === 1 ? 'retrabajada' : 'retrabajadas'}`,
      shared > 0 && `${shared} entre dos`,
    ]
      .filter(Boolean)
      .join(' · '),
  changedTo: (code, soFarMs) =>
    soFarMs < 1_000 ? `Desde ahora ${code}` : `Desde ahora ${code}, con los ${clockFace(soFarMs)} que lleva`,
  reasonTitle: '¿Por qué? Es voluntario',
  reasonTitleAfter: (ms) => `Parada ${clockFace(ms)}: ¿por qué?`,
  gapTitle: (ms) => `Sin trabajo durante ${roundedClockFace(ms)}: ¿qué fue?`,
  sayWhy: (ms) => `Parada ${clockFace(ms)} – indicar motivo`,
  saidWhy: (ms, why) => `${why}: ${clockFace(ms)}`,
  sayWhat: (ms, to) => `${roundedClockFace(ms)} antes de ${to} – ¿qué fue?`,
  isNext: 'Esa es la siguiente pregunta: leerla antes',
  answered: (word, left) => (left === 0 ? `Respondido: ${word}` : `Respondido: ${word}. Quedan ${left}`),
};
