import type { cautionWords as english } from '../en/storage-cautions';

/** What to know about this tablet before hours of work are trusted to it. */
export const cautionWords: typeof english = {
  little: (size) =>
    `En esta tableta solo quedan ${size} para registros. Antes, sacar una copia en Registros y liberar espacio.`,
  forgetful:
    'Esto es una pestaña del navegador, y este navegador borra lo que un sitio guarda en una pestaña tras siete días sin uso. Antes, poner Pacewright en la pantalla de inicio: Compartir, luego Añadir a pantalla de inicio. Lo ya registrado aquí se lleva en una copia: hacerla en Registros y restaurarla allí.',
};
