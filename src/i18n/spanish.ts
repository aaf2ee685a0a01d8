import type { Tongue } from './tongue';

const words: Record<string, object> = Object.assign(
  {},
  ...Object.values(import.meta.glob<object>('./es/*.ts', { eager: true })),
);

export const tongue: Tongue = { locale: 'es-ES', direction: 'ltr', translation: (name) => words[name] };
