/** Words for the reasons every shop starts with, and for a stoppage that nobody explained. By reason id. */
export const reasonWords: Record<string, string> = {
  material: 'Espera de material',
  machine: 'Máquina o herramienta',
  quality: 'Duda de calidad',
  'called-away': 'Llamado a otra tarea',
  'set-up': 'Preparación',
  break: 'Pausa',
  rework: 'Retrabajo',
  'not-stated': 'Sin indicar',
};
