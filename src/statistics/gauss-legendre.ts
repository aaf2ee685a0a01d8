/**
 * Gauss–Legendre nodes and weights: the points and weights that integrate every polynomial up to degree
 * 2·count − 1 exactly over −1 to 1.
 *
 * Formula: node xᵢ = i-th root of the Legendre polynomial P, weight = 2/((1 − xᵢ²)·P′(xᵢ)²)
 * Source: M. Abramowitz and I. Stegun, Handbook of Mathematical Functions, 25.4.29; roots by Newton's
 * method from the starting value cos(π·(i + ¾)/(count + ½)).
 *
 * @throws {RangeError} gaussLegendre requires a whole number of nodes from 1 to 200
 * @example
 * gaussLegendre(1)[0].weight // => 2
 */
export function gaussLegendre(count: number): { readonly node: number; readonly weight: number }[] {
  if (!Number.isInteger(count) || count < 1 || count > 200) {
    throw new RangeError('gaussLegendre requires a whole number of nodes from 1 to 200');
  }
  return Array.from({ length: count }, (_, i) => {
    let node = Math.cos((Math.PI * (i + 0.75)) / (count + 0.5));
    let slope = 1;
    // Six Newton steps are two more than the worst start needs for double precision.
    for (let step = 0; step < 6; step += 1) {
      let previous = 0;
      let value = 1;
      for (let degree = 1; degree <= count; degree += 1) {
        const next = ((2 * degree - 1) * node * value - (degree - 1) * previous) / degree;
        previous = value;
        value = next;
      }
      slope = (count * (node * value - previous)) / (node * node - 1);
      node -= value / slope;
    }
    return { node, weight: 2 / ((1 - node * node) * slope * slope) };
  });
}
