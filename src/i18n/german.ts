import type { Tongue } from './tongue';

const words: Record<string, object> = Object.assign(
  {},
  ...Object.values(import.meta.glob<object>('./de/*.ts', { eager: true })),
);

export const tongue: Tongue = { locale: 'de-DE', direction: 'ltr', translation: (name) => words[name] };
