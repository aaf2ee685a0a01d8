import { spoken } from '../spoken';
/** Words for the reasons every shop starts with, and for a stoppage that nobody explained. By reason id. */
export const reasonWords = spoken<Record<string, string>>('reasonWords', {
  material: 'Waiting for material',
  machine: 'Machine or tool',
  quality: 'Quality question',
  'called-away': 'Called away',
  'set-up': 'Set-up',
  break: 'Break',
  rework: 'Rework',
  'not-stated': 'Not stated',
});
