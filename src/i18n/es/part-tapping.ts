import type { partTapping as english } from '../en/part-tapping';
import { formatDay } from '../format-day';
import { formatNumber } from '../format-number';
import { roundedClockFace } from '../rounded-clock-face';

/** Words of how a part is tapped, and of a target that calendar and demand give. */
export const partTapping: typeof english = {
  title: 'Cuándo se toca',
  tappings: {
    'each-part': 'Una vez por pieza',
    'start-stop': 'Inicio y fin',
    elements: 'Cada elemento',
  },
  what: {
    'each-part': 'Del final de una pieza al final de la siguiente: un toque por pieza.',
    'start-stop':
      'Solo el tiempo con las manos en la pieza. Lo que hay entre dos piezas no entra en ningún ciclo.',
    elements:
      'Un toque al final de cada elemento del método. Los elementos propios de la máquina no llevan toque.',
  },
  needsMethod:
    'Esta pieza aún no tiene un método con dos elementos o más; hasta entonces, un toque por pieza.',
  takt: 'Takt',
  demand: 'Piezas al día (no se guarda)',
  take: 'Tomar como objetivo',
  working: (net, demand, taktMs, day) =>
    `${formatNumber(net)} min el ${formatDay(day)} ÷ ${formatNumber(demand)} = ${roundedClockFace(taktMs)} por pieza.`,
  rests: (net, attended) =>
    `Todas las pausas quedan fuera. El descanso es presencia, así que un día justo al takt tiene una eficiencia del ${formatNumber((100 * net) / attended)} %: ${net} de ${attended} min.`,
  taken: 'El objetivo es el takt.',
  faults: {
    'no-calendar': 'Para el takt hace falta el calendario: ver «Horario» en Taller.',
    'no-shift': 'El calendario no tiene turno en las próximas dos semanas; por eso no hay takt.',
    'no-demand': 'Un número entero de piezas mayor que 0, por favor.',
    absurd: 'Con tantas piezas quedaría menos de un segundo para cada una, o más de un día.',
  },
};
