import type { copiesWords as english } from '../en/copies';
import { formatNumber } from '../format-number';

const counted = (count: number, one: string, more: string) =>
  `${formatNumber(count)} ${count === 1 ? one : more}`;
const records = (count: number) => counted(count, 'registro', 'registros');
const breaks = (count: number) => counted(count, 'rotura', 'roturas');

/** Words about copies outside the tablet, restoring them, snapshots, and the check of all records. */
export const copiesWords: typeof english = {
  records,
  inDemo: 'El taller de ejemplo es inventado: no necesita copia, y ninguna copia propia se carga en él.',
  keep: {
    title: 'Guardar una copia fuera',
    text: 'Una tableta perdida o rota se lleva sus registros. Solo una copia guardada en otro sitio sobrevive a eso.',
    age: (age) => `Última copia: ${age}.`,
    none: 'Aún no se ha hecho ninguna copia.',
    since: (count) =>
      count === 0
        ? 'Desde entonces no se ha registrado nada.'
        : `${counted(count, 'registro posterior no está', 'registros posteriores no están')} en ella.`,
    notYet: (count) => `${records(count)} ${count === 1 ? 'está' : 'están'} solo en esta tableta.`,
    how: {
      folder: 'Se escribió en la carpeta y se volvió a leer.',
      shared: 'Se entregó al menú de compartir.',
      downloaded: 'Se ofreció como descarga; si se guardó, el navegador no lo dice.',
    },
    make: 'Hacer una copia',
    making: 'Escribiendo la copia y volviéndola a leer …',
    lock: 'Protegerla con una frase de contraseña',
    lockNote:
      'Sin ella, cualquiera que reciba el archivo puede leerlo. Con ella, solo la frase lo abre: apuntarla, porque nadie puede recuperarla.',
    phrase: 'Frase de contraseña',
    again: 'La misma otra vez',
    phraseShort:
      'Una frase de contraseña necesita al menos ocho caracteres. Tres o cuatro palabras son mejor.',
    phraseDiffers: 'Las dos frases de contraseña no coinciden.',
    noCryptography:
      'Este navegador no puede proteger un archivo aquí; abrir la aplicación en una dirección https.',
    ready: (name, count, size) => `${name}: ${records(count)}, ${size}, releída e intacta.`,
    unsaved: (count) =>
      ` ${counted(count, 'registro aún sin guardar no está', 'registros aún sin guardar no están')} en ella.`,
    withBreaks: (count) => ` El historial tiene ${breaks(count)}; todo lo legible está en la copia.`,
    share: 'Compartir …',
    download: 'Descargar',
    cancel: 'Cancelar',
    close: 'Cerrar',
    outcome: {
      shared: (name) => `Entregada al menú de compartir: ${name}. Mirar si ha llegado.`,
      refused: (name) => `El sistema no aceptó ${name}. Descargarla en su lugar.`,
      cancelled: (name) => `${name} no se compartió.`,
    },
    downloaded: (name) =>
      `Ofrecida como descarga: ${name}. Mirar si está ahí y luego sacarla de esta tableta.`,
    notVerified: (sentence) => `No se hizo ninguna copia: lo escrito no se puede releer. ${sentence}`,
    notWritten: (problem) => `No se hizo ninguna copia (${problem}). Los registros están como estaban.`,
  },
  folder: {
    title: 'Una carpeta para copias',
    text: 'Una unidad de red o una tarjeta de memoria. Tras cada periodo o estudio terminado se escribe allí una copia automáticamente, un archivo al día. Estas copias no están protegidas.',
    choose: 'Elegir carpeta …',
    other: 'Elegir otra …',
    chosen: (name) => `Las copias van a la carpeta «${name}».`,
    asks: (name) => `El navegador quiere que se le pregunte otra vez antes de escribir en «${name}».`,
    ask: 'Permitirlo',
    now: 'Copiar allí ahora',
    forget: 'No usar carpeta',
    forgotten: 'Ya no se usa ninguna carpeta. Lo que hay en ella queda.',
    done: (name, count) => `${name}: ${records(count)}, releída e intacta.`,
    collapsed: (count, before) =>
      `No se escribió nada: el historial tiene ${records(count)}, y la copia de hoy allí, ${formatNumber(before)}. Esa copia se dejó como estaba.`,
    noFolder: 'No hay carpeta elegida.',
    failed: (problem) => `No se pudo usar la carpeta (${problem}).`,
  },
  missing: {
    text: (count) =>
      `${counted(count, 'registro que estaba en esta tableta ha', 'registros que estaban en esta tableta han')} desaparecido. Incorporar una copia: abajo se examina la más completa de esta tableta, si la hay. Una de fuera puede estar más completa.`,
    leave: 'Dejarlo así',
  },
  restore: {
    title: 'Restaurar una copia',
    text: 'Añade lo que falta en esta tableta y no cambia nada de lo que hay. También se pueden añadir copias de otras tabletas.',
    choose: 'Elegir copia …',
    reading: 'Leyendo la copia y comparando …',
    refused: (sentence) => `${sentence} No se ha cambiado nada.`,
    unreadable: (problem) =>
      `No se pudieron leer los registros de esta tableta para comparar (${problem}). No se ha cambiado nada.`,
    locked: 'Esta copia está protegida. Escribir su frase de contraseña.',
    open: 'Abrirla',
    rows: {
      made: 'Hecha',
      holds: 'Contiene',
      added: 'Nuevos aquí',
      there: 'Ya están aquí',
      clashes: 'Conflictos',
      breaks: 'Roturas en ella',
    },
    made: (day, device, release) => `${day} en ${device}, versión ${release}`,
    tablets: (names) => `de ${names}`,
    clash: (device, sequence) => `registro ${sequence} de ${device}`,
    clashText: (count, places) =>
      `${records(count)} con otro contenido bajo el mismo número, empezando por: ${places}. No se puede tomar nada: cuál es el correcto, ningún programa lo puede decir.`,
    none: 'ninguno',
    ahead: (day, time) =>
      `El reloj de la otra tableta va adelantado: sus registros llegan hasta ${day}, ${time}. Lo que se fijó allí, un objetivo o el PIN, vale hasta entonces por delante de lo que se fije aquí. Antes, poner en hora el reloj que va mal.`,
    breaks: (count) => `${breaks(count)} que tenía el historial cuando se hizo la copia`,
    take: 'Incorporarla',
    leave: 'Dejarla',
    sharedCodes: (codes) =>
      `Dos piezas se llaman ${codes}. Cambiar el nombre de una en Taller o ponerla fuera de uso; si no, se ofrecen las dos.`,
    nothingNew: 'Todo lo de esta copia ya está aquí.',
    busy: 'Se está midiendo algo. Terminar antes el periodo o el estudio; no se ha cambiado nada.',
    taking: 'Incorporando los registros …',
    done: (count) =>
      `${records(count)} ${count === 1 ? 'incorporado' : 'incorporados'}. Todo lo que había aquí está como estaba.`,
    cutShort: (written, of, problem) =>
      `El almacenamiento no aceptó más tras ${formatNumber(written)} de ${records(of)} (${problem}). Los incorporados están intactos; restaurar otra vez para el resto.`,
  },
  overlaps: {
    title: 'Dos tabletas, una persona, el mismo tiempo',
    text: 'Uno de los dos periodos puede ser de otra persona: corregirla en Repaso de ese día.',
    line: (person, minutes, first, second) =>
      `${person}: ${minutes} min en ambos, en ${first} y en ${second}`,
    review: 'Abrir Repaso',
    unknown: 'No se pudo leer si se solapan periodos de dos tabletas.',
  },
  snapshots: {
    title: 'Copia diaria en esta tableta',
    text: 'Cuando no se mide nada; se guardan las últimas ocho. Sirve si el historial se daña, no tras borrar los datos del navegador.',
    none: 'Aún ninguna.',
    impossible: 'Este navegador no puede guardarlas. Por eso importan aún más las copias fuera.',
    line: records,
    look: 'Examinarla',
    lookAt: (day) => `Examinarla: la copia del ${day}`,
    collapsed: (now, before, day) =>
      `El historial tiene ${records(now)}; la copia del ${day}, ${formatNumber(before)}. Se perdieron registros: examinar esa copia e incorporarla. Hasta entonces no se descarta ninguna más antigua.`,
    failed: (problem) => `No se pudo hacer la de hoy (${problem}).`,
  },
  check: {
    title: 'Comprobar todos los registros',
    text: 'Sigue la cadena de sumas de control del primer registro al último. Encuentra daños, no engaños.',
    go: 'Comprobar todos los registros',
    going: (done) => `${formatNumber(done)} registros comprobados …`,
    sound: (count, tablets) =>
      `${records(count)} de ${counted(tablets, 'tableta', 'tabletas')}: todos se siguen sin roturas.`,
    broken: (count, broken) =>
      `${records(count)} ${count === 1 ? 'comprobado' : 'comprobados'}; ${breaks(broken)}. Todo lo legible se puede seguir copiando y exportando.`,
    missing: (device, sequence) => `Falta el registro ${sequence} de ${device}.`,
    changed: (device, sequence) => `El registro ${sequence} de ${device} no es lo que se escribió.`,
    unreadable: (device, sequence) => `El registro ${sequence} de ${device} no puede ir en ninguna copia.`,
    more: (count) => `y ${formatNumber(count)} más`,
    recent: 'Entre los registros más recientes:',
    failed: (problem) => `No se pudo terminar la comprobación (${problem}). No se ha borrado nada.`,
  },
};
