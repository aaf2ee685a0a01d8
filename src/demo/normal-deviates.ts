/**
 * Standard normal deviates from uniform ones, two uniform numbers each.
 *
 * Formula: z = √(−2 ln a) · cos(2πb)
 *   a, b  two successive numbers from the source, strictly between 0 and 1
 * Source: G. E. P. Box and M. E. Muller, "A note on the generation of random normal deviates", Annals
 * of Mathematical Statistics 29, 1958, pp. 610–611 (from memory); the sine half is thrown away, so that
 * every deviate costs the same number of draws.
 */
export function normalDeviates(uniform: () => number): () => number {
  return () => {
    const a = uniform();
    const b = uniform();
    return Math.sqrt(-2 * Math.log(a)) * Math.cos(2 * Math.PI * b);
  };
}
