import { betaTails, type Tails } from './beta-tails';

/**
 * Beta tails at a logarithm of odds: lets a search run over the whole line without meeting 0 or 1.
 *
 * Formula: ln(x/y) = logOdds, y = 1 − x
 *   a, b  shapes, above 0; logOdds  a pure number
 *
 * Callers check their input.
 *
 * @example
 * logOddsTails(2, 2, 0).lower // => 0.5
 */
export function logOddsTails(a: number, b: number, logOdds: number): Tails {
  const odds = Math.exp(-Math.abs(logOdds));
  const small = odds / (1 + odds);
  const large = 1 / (1 + odds);
  return logOdds < 0 ? betaTails(a, b, small, large) : betaTails(a, b, large, small);
}
