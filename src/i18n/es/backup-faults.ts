import type { backupFaultWords as english } from '../en/backup-faults';

/** Why a copy is refused. What it means for the records on the tablet is not said here: they are as they were. */
export const backupFaultWords: typeof english = {
  'cannot-read': ({ problem }) => `No se pudo leer el archivo (${problem}).`,
  'not-a-backup': 'Este archivo no es una copia de seguridad de Pacewright, o su principio está dañado.',
  'made-by-newer-version': ({ release }) =>
    `El archivo es de una versión más nueva${named(release)}; primero tomar esa versión y luego restaurar.`,
  'unknown-kind': ({ line, kind, release }) =>
    `La línea ${line} contiene una clase de registro que esta versión no conoce, ${kind}: el archivo es de una versión más nueva${named(release)}, o está dañado.`,
  'pass-phrase-needed': 'El archivo está cerrado; se abre con la frase de paso con la que se hizo.',
  'pass-phrase-wrong': 'La frase de paso no es la del archivo, o el principio del archivo está dañado.',
  'no-cryptography':
    'El archivo está cerrado y este navegador no puede abrirlo aquí; abrir la aplicación en una dirección https.',
  'piece-damaged': ({ piece }) => `El archivo está dañado o cortado: su trozo ${piece} no se abre.`,
  'not-text': ({ line }) => `La línea ${line} está dañada: no es texto en UTF-8.`,
  'not-json': ({ line }) => `La línea ${line} está dañada: no es JSON.`,
  'line-too-long': ({ line }) => `La línea ${line} es más larga que cualquier registro.`,
  'not-a-record': ({ line, where }) =>
    `La línea ${line} no es un registro como los escribe Pacewright${where && `, en ${where}`}.`,
  'out-of-order': ({ line }) => `La línea ${line} está fuera de orden o repetida.`,
  'record-missing': ({ sequence, device }) => `Falta en el archivo el registro ${sequence} de ${device}.`,
  'record-changed': ({ sequence, device }) =>
    `El registro ${sequence} de ${device} no es lo que escribió la tableta: su suma de comprobación no cuadra.`,
  'cut-short': ({ line }) =>
    `El archivo termina en la línea ${line}, antes de su última línea: está cortado.`,
  'more-after-end': ({ line }) => `La línea ${line} viene después del final de la copia.`,
  'counts-differ': ({ said, found }) => `El archivo dice que contiene ${said} registros y contiene ${found}.`,
  'contents-changed': 'El archivo no es lo que se escribió: su suma de comprobación (SHA-256) es otra.',
};

function named(release: string): string {
  return release && `, ${release}`;
}
