import type { scanned as english } from '../en/scanned';

/** Words about what a scanner typed. */
export const scanned: typeof english = {
  chosen: (said) => `Escaneado: ${said}`,
  inHand: (code) => `Escaneado: ${code} está en curso`,
  unknown: (text) =>
    `Escaneado «${text.length > 20 ? `${text.slice(0, 20)}…` : text}»: ninguna pieza tiene este código`,
  tooLong: 'El texto escaneado es demasiado largo para ser el código de una pieza',
};
