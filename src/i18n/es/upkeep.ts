import type { upkeepWords as english } from '../en/upkeep';
import { formatNumber } from '../format-number';

/** Words of the frame about how the records fare. */
export const upkeepWords: typeof english = {
  copy: (age) => `Última copia fuera: ${age}`,
  noCopy: 'Aún sin copia fuera',
  broken: 'Un registro está dañado: ver Registros',
  coarse: (ms) => `El reloj de este navegador avanza en pasos de ${formatNumber(ms)} ms`,
  collapsed: 'Faltan registros: ver Registros',
};
