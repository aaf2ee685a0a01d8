import type { shell as english } from '../en/shell';

/** Words of the frame around every screen. */
export const shell: typeof english = {
  name: 'Pacewright',
  screens: {
    pace: 'Ritmo',
    study: 'Estudio',
    cell: 'Célula',
    review: 'Repaso',
    shop: 'Taller',
    records: 'Registros',
  },
  questions: {
    pace: '¿Voy en tiempo con esta pieza, delante o detrás?',
    study: '¿Cuánto debe durar esto?',
    cell: '¿Qué manda y qué lo cambiaría?',
    review: '¿Cómo fue el día, visto con justicia?',
    shop: '¿Qué fabricamos, cómo y a qué ritmo?',
    records: '¿Están seguros mis datos y cómo los saco?',
  },
  timing: { running: 'en marcha', stopped: 'parado' },
  notices: 'Avisos',
  tablet: 'Tableta',
  saved: 'Guardado',
  recorded: 'Registrado, guardando …',
  notSaved: (count, isInReserve) =>
    `Sin guardar: ${count} ${count === 1 ? 'registro' : 'registros'} ${isInReserve ? 'en reserva' : 'solo en memoria'}`,
  memoryOnly: 'Este navegador no conserva nada: los registros se pierden al cerrar la página',
  missing: 'No se pudo cargar esta parte de la aplicación. No se ha borrado nada.',
  rescue: 'Guardar todos los registros en un archivo, sin la aplicación',
};
