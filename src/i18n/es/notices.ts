import type { noticeWords as english } from '../en/notices';

/** Words of the strip above every screen: what is not as always. */
export const noticeWords: typeof english = {
  demo: 'Taller de ejemplo: registros inventados, aparte de los propios',
  leaveDemo: 'Salir del ejemplo',
  readOnly: 'Otra pestaña de Pacewright está registrando. Esta solo lee.',
  takeOver: 'Registrar aquí',
  takeOverAsk: 'La otra pestaña terminará de guardar y después solo leerá.',
  takeOverYes: 'Sí, registrar aquí',
  outdated:
    'Una versión más nueva de Pacewright ha abierto estos registros en otra pestaña. Esta pestaña ya no registra nada.',
  outdatedInReserve: 'Lo que no pudo guardar queda en reserva y pasa a los registros en el próximo arranque.',
  loadAgain: 'Recargar',
  missing: (count) =>
    count === 1
      ? 'Falta 1 registro que estaba en esta tableta.'
      : `Faltan ${count} registros que estaban en esta tableta.`,
  restore: 'Restaurar …',
  updateWaits: 'Hay lista una versión más nueva.',
  updateTake: 'Cambiar ahora',
  noAnswer: 'el almacenamiento de esta tableta no responde',
  full: 'el almacenamiento está lleno: sacar una copia en Registros',
  notOpen: 'los registros no están abiertos: recargar después del periodo',
  ofNewer: 'una versión más nueva tiene estos registros',
};
