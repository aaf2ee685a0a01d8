import type { leftOpen as english } from '../en/left-open';

/** Words about a turn that was left open. */
export const leftOpen: typeof english = {
  leftTitle: (person, day, time) => `El periodo de ${person} sigue abierto. Último toque: ${day}, ${time}.`,
  leftText: '¿Sigue, o terminó ahí?',
  leftGoOn: 'Sigue',
  leftEnd: 'Terminarlo',
  leftNote:
    'Si se termina ahora, el tiempo desde entonces queda aparte, sin justificar, y no cuenta para ninguna pieza.',
};
