import type { firstSteps as english } from '../en/first-steps';

/** Words of the first minutes: putting the app on the tablet, and a way through the demo shop. */
export const firstSteps: typeof english = {
  install: {
    title: 'Instalarla en esta tableta',
    why: 'Así se abre como una aplicación, también sin red, y el navegador conserva sus registros mejor que los de una pestaña.',
    menu: 'En el menú del navegador: «Instalar aplicación» o «Añadir a pantalla de inicio». Si no hay ninguna, funciona en la pestaña.',
    go: 'Instalar',
  },
  guide: {
    title: 'Tres personas, tres preguntas',
    open: 'Las tres preguntas',
    away: 'Quitar',
    here: 'Mirar aquí:',
    who: {
      pace: 'Persona en el puesto',
      study: 'Estudios',
      cell: 'Estudios',
      review: 'Encargado/a del turno',
    },
    look: {
      pace: 'elegir K7 y M, tocar Empezar y después la superficie grande una vez por pieza. Dice cuánto por delante o por detrás.',
      study: 'abrir un estudio. Su hoja acaba en el tiempo estándar; tocar una cifra muestra cómo se obtuvo.',
      cell: 'elegir M: mandan las manos, y en «¿Y si …?» una máquina más rápida no aporta nada. Después elegir V.',
      review:
        'el viernes 27 de marzo salieron 283 piezas y el martes 24, 231, de una mezcla más dura. La eficiencia fue casi igual.',
    },
  },
};
