import type { openingWords as english } from '../en/opening';

/** Words of the page while the records are not open. */
export const openingWords: typeof english = {
  opening: 'Abriendo los registros …',
  heldUp:
    'En otra pestaña sigue abierta una versión más antigua de Pacewright y está midiendo algo. Terminarlo allí o cerrar esa pestaña: esta se abre entonces por sí sola.',
  notAnswering: 'El almacenamiento de esta tableta no responde. No se ha borrado nada.',
  cannotOpen: 'No se pudieron leer los registros. No se han borrado.',
  newer: 'Una versión más nueva de Pacewright ha abierto estos registros.',
  newerText:
    'Esta página es de una más antigua. No se ha borrado nada. Cerrar todas las pestañas de Pacewright y volver a abrirlo.',
  tryAgain: 'Reintentar',
  rescue: 'Guardar todos los registros en un archivo, sin la aplicación',
  goOnText:
    'Se puede seguir midiendo sin ellos. Lo que se registre queda en reserva y pasa a los registros cuando vuelvan a abrirse.',
  goOn: 'Seguir en reserva',
};
