import type { recordsWords as english } from '../en/records';

const records = (count: number) => `${count} ${count === 1 ? 'registro' : 'registros'}`;

/** Words of the Records screen. */
export const recordsWords: typeof english = {
  reading: 'Contando los registros …',
  trouble: (problem) => `No se pudieron contar los registros (${problem}). No se ha borrado nada.`,
  kept: {
    title: 'Lo que hay en esta tableta',
    /** Stands after the figure itself. */
    saved: (count) => (count === 1 ? 'registro guardado' : 'registros guardados'),
    rows: {
      holds: 'Contiene',
      days: 'De, a',
      tablet: 'Nombre de esta tableta',
      copies: 'Copias en esta tableta',
      lasting: 'Promesa del navegador',
      room: 'Espacio libre',
      unsaved: 'Sin guardar',
    },
    holds: (turns, studies) =>
      `${turns} ${turns === 1 ? 'periodo' : 'periodos'}, ${studies} ${studies === 1 ? 'estudio' : 'estudios'}`,
    days: (first, last) => (first === last ? first : `${first} a ${last}`),
    noDays: 'aún ningún periodo ni estudio',
    copies: {
      2: 'dos: una base de datos y un diario al lado',
      1: 'una: una base de datos',
      0: 'ninguna: todo se pierde al cerrar la página',
    },
    lasting: {
      asking: 'preguntando …',
      yes: 'dada: conserva los registros hasta que alguien los borre',
      no: 'no dada: puede borrar los registros si falta espacio en la tableta',
      forgetful:
        'no dada: en una pestaña del navegador los borra tras siete días sin uso. Poner la aplicación en la pantalla de inicio (Compartir, luego Añadir a pantalla de inicio) y llevarse los registros en una copia',
      unknown: 'este navegador no lo dice',
    },
    ask: 'Preguntar otra vez',
    noRoom: 'el navegador no lo dice',
    littleRoom: (size) => `${size}, que es poco: hacer una copia y luego liberar espacio en la tableta`,
    askedInVain:
      'El navegador volvió a decir que no. A menudo dice que sí cuando la aplicación está instalada en la pantalla de inicio o se ha usado un tiempo.',
    unsaved: (count) => `${records(count)}, solo en memoria`,
  },
  take: {
    title: 'Importar una tabla de lecturas',
    text: 'Una fila por lectura, en CSV, al menos con las columnas study, cycle, element y observed_s o watch_s. Se toma todo o nada.',
    choose: 'Elegir tabla …',
    reading: 'Leyendo la tabla …',
    refused: (name, count) =>
      `No se tomó nada de ${name}: ${count === 1 ? 'lo impide un fallo' : `lo impiden ${count} fallos`}.`,
    more: (count) => `y ${count} más`,
    tooLarge: (name, megabytes) =>
      `No se tomó nada: ${name} pasa de ${megabytes} MB, y ninguna tabla de lecturas es tan grande.`,
    unreadable: (name, problem) => `No se tomó nada: no se pudo leer ${name} (${problem}).`,
  },
  give: {
    title: 'Exportar tablas',
    profile: 'Números en las tablas',
    profiles: {
      point: { name: '1.25', note: 'punto decimal, comas entre campos' },
      comma: { name: '1,25', note: 'coma decimal, punto y coma entre campos' },
    },
    study: 'Lecturas de un estudio',
    studyText: 'Todas las lecturas: bastan para volver a calcular el estudio en cualquier sitio.',
    noStudy: 'Aún no hay estudios.',
    saveStudy: 'Guardar la tabla de lecturas',
    days: 'Días',
    daysText: 'Una fila por día y pieza: n, media, dispersión, objetivo.',
    saveDays: 'Guardar la tabla de días',
    saved: (name) => `Ofrecido como descarga: ${name}.`,
    guarded: (count) =>
      count === 1
        ? ' Un texto empieza como una fórmula y lleva delante un apóstrofo, para que ninguna hoja de cálculo lo ejecute.'
        : ` ${count} textos empiezan como una fórmula y llevan delante un apóstrofo, para que ninguna hoja de cálculo los ejecute.`,
    noDays: 'Aún no hay ningún día que guardar.',
    noReadings: 'Este estudio no tiene lecturas que guardar.',
    failed: (problem) => `No se hizo ninguna tabla (${problem}).`,
  },
  demo: {
    title: 'El taller de ejemplo',
    text: 'Un taller inventado de cuatro semanas para probarlo todo. Sus registros están aparte de los propios y nunca se mezclan con ellos.',
    open: 'Abrir el taller de ejemplo',
    leave: 'Salir del taller de ejemplo',
  },
  purpose: {
    title: 'Para qué son estos registros',
    text: 'Para mejorar y planificar el trabajo; no para salarios ni sanciones. Esto no es un registro de jornada ni una nómina. Nada sale de la tableta si nadie lo saca aquí.',
  },
};
