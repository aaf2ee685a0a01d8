import type { changeWords as english } from '../en/changes';

/** What each release brought, newest first: what whoever uses it will notice, in a few lines. */
export const changeWords: typeof english = {
  title: 'Qué hay de nuevo',
  updated: 'Pacewright se ha actualizado.',
  close: 'Cerrar',
  release: (version) => `Versión ${version}`,
  releases: [
    {
      version: '0.1.0',
      lines: [
        'La primera versión.',
        'Ritmo: un toque por pieza, por delante o por detrás, paradas, el registro propio.',
        'Estudio: reloj, valoración, hoja resumen, estándares, estudios en papel.',
        'Célula: qué manda en ella, qué traería un cambio, tiempo de paso.',
        'Repaso: el día, las semanas, antes y después, promesas.',
        'Registros: dos copias en la tableta, copias fuera, tablas, revisión de la tableta.',
      ],
    },
  ],
};
