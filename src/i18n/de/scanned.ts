import type { scanned as english } from '../en/scanned';

/** Words about what a scanner typed. */
export const scanned: typeof english = {
  chosen: (said) => `Gescannt: ${said}`,
  inHand: (code) => `Gescannt: ${code} ist in Arbeit`,
  unknown: (text) =>
    `Gescannt „${text.length > 20 ? `${text.slice(0, 20)}…` : text}“: kein Teil hat dieses Kürzel`,
  tooLong: 'Gescannter Text ist zu lang für das Kürzel eines Teils',
};
