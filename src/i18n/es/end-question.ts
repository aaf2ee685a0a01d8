import type { endQuestion as english } from '../en/end-question';
import { clockFace } from '../format-duration';

/** Words of the question at the end of a turn. */
export const endQuestion: typeof english = {
  endTitle: '¿Terminar este periodo?',
  endText: (count, ms) =>
    `${count} ${count === 1 ? 'pieza terminada' : 'piezas terminadas'}. La pieza en curso, ${clockFace(ms)} hasta ahora, no se contará.`,
  toRework: (count) =>
    `${count} ${count === 1 ? 'pieza espera' : 'piezas esperan'} retrabajo: en cualquier periodo aquí, en «Pieza anterior».`,
  endYes: 'Terminar',
  endNo: 'Seguir trabajando',
  handOver: 'O sigue otra persona',
  goesOn: (code, ms) => `Sigue ${code}, con los ${clockFace(ms)} que lleva esta pieza`,
  handOverNote: 'La pieza en curso es de ambas personas y no entra en la media propia de ninguna.',
};
