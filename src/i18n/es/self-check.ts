import type { selfCheckWords as english } from '../en/self-check';
import { formatNumber } from '../format-number';

/** Words of the check of the tablet itself. */
export const selfCheckWords: typeof english = {
  title: 'Revisar esta tableta',
  text: 'Mira el reloj, el almacenamiento, la pantalla y cada registro, y no cambia ninguno.',
  looking: (records) => `Revisando … ${formatNumber(records)} registros recorridos`,
  failed: (problem) => `No se pudo terminar la revisión (${problem}).`,
  allFine: 'No hay nada que atender.',
  some: (count) =>
    count === 1 ? 'Hay una cosa que atender.' : `Hay ${formatNumber(count)} cosas que atender.`,
  states: { fine: 'Bien', look: 'Atender', unknown: 'No se sabe' },
  names: {
    clock: 'Reloj',
    saving: 'Tiempo de guardado',
    screen: 'Pantalla encendida',
    installed: 'Instalada',
    offline: 'Sin red',
    copy: 'Copia fuera',
    records: 'Registros',
  },
  clock: (ms) => `da la hora en pasos de ${formatNumber(ms, ms < 1 ? 2 : 1)} ms`,
  saving: (half, longest, writes) =>
    `de ${writes} escrituras, la mitad tardó como mucho ${formatNumber(half, 1)} ms y la más lenta ${formatNumber(longest, 1)} ms. Cada toque va también al diario, que no se mide.`,
  notMeasured: 'no se pudo medir',
  screen: {
    kept: 'sí, mientras se cronometra',
    refused: 'el sistema acaba de negarlo',
    cannot: 'este navegador no puede',
  },
  yes: 'sí',
  inTab: 'no: es una pestaña del navegador',
  offline: 'se abre: sus archivos están en esta tableta',
  notOffline: 'sus archivos aún no están en esta tableta',
  unread: 'no se pudo leer',
  todo: {
    clock: 'Los tiempos no son más finos. Usar otro navegador o desactivar en este lo que redondea el reloj.',
    saving:
      'Los toques conservan su hora, pero «Guardado» llega tarde. Cerrar otras aplicaciones, liberar espacio, reiniciar la tableta.',
    lasting: 'Instalar la aplicación y después, en Registros, preguntar otra vez al navegador.',
    copies: 'Salir de la ventana privada o usar un navegador que pueda conservar lo que guarda un sitio.',
    screen: 'Mirar el ahorro de batería en los ajustes, o dejar la pantalla encendida mientras se carga.',
    offline: 'Cargar la página otra vez mientras haya red; hace falta una dirección https.',
    copy: 'Hacer una copia en Registros.',
    records: 'Hacer una copia ahora y dar el texto de abajo a quien ayude.',
  },
  handOn: 'Un texto para quien ayude',
  holds: 'Contiene estos datos, la versión y el navegador; ningún registro y ningún nombre.',
  copy: 'Copiar el texto',
  copied: 'Copiado.',
  notCopied: 'Este navegador no deja copiarlo: guardarlo como archivo.',
  share: 'Compartir …',
  download: 'Guardar como archivo',
  offered: (name) => `Ofrecido como descarga: ${name}.`,
  again: 'Revisar otra vez',
  back: 'A Registros',
  browser: 'Navegador',
  page: 'Pantalla',
  made: 'Hecho',
};
