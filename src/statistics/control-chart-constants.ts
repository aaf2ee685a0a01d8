import { gaussLegendre } from './gauss-legendre';
import { normalDensity } from './normal-density';
import { normalProbability } from './normal-probability';

export type ControlChartConstants = {
  /** Mean and deviation of the range of n normal values of deviation 1. */
  readonly d2: number;
  readonly d3: number;
  /** Mean of the sample deviation of n normal values of deviation 1. */
  readonly c4: number;
  /** Limits of means, from the mean range (A2) or the mean sample deviation (A3). */
  readonly A2: number;
  readonly A3: number;
  /** Lower and upper limit of ranges as multiples of the mean range. */
  readonly D3: number;
  readonly D4: number;
  /** Lower and upper limit of sample deviations as multiples of their mean. */
  readonly B3: number;
  readonly B4: number;
  /** Limits of individual values, from the mean range of n successive ones. */
  readonly E2: number;
};

const computed = new Map<number, ControlChartConstants>();

/**
 * Control chart constants for subgroups of n, computed from the normal distribution, not typed from a
 * table, so that no printed rounding enters a limit.
 *
 * Formula: d₂ = ∫₀^∞ (1 − F(w)) dw, d₂² + d₃² = 2·∫₀^∞ w·(1 − F(w)) dw,
 *          F(w) = n·∫ φ(x)·(Φ(x + w) − Φ(x))ⁿ⁻¹ dx, the distribution of the range,
 *          c₄ = √(2/(n − 1))·Γ(n/2)/Γ((n − 1)/2),
 *          A₂ = 3/(d₂√n), A₃ = 3/(c₄√n), D₃ = max(0, 1 − 3d₃/d₂), D₄ = 1 + 3d₃/d₂,
 *          B₃ = max(0, 1 − 3√(1 − c₄²)/c₄), B₄ = 1 + 3√(1 − c₄²)/c₄, E₂ = 3/d₂
 *   n  readings in a subgroup, 2 to 50
 * Source: L. H. C. Tippett, Biometrika 17, 1925 (range); D. C. Montgomery, Introduction to Statistical
 * Quality Control, appendix VI (relations and rounded table).
 *
 * @throws {RangeError} controlChartConstants requires a whole subgroup size from 2 to 50
 * @example
 * controlChartConstants(5).d2.toFixed(4) // => '2.3259'
 */
export function controlChartConstants(n: number): ControlChartConstants {
  if (!Number.isInteger(n) || n < 2 || n > 50) {
    throw new RangeError('controlChartConstants requires a whole subgroup size from 2 to 50');
  }
  const known = computed.get(n);
  if (known) return known;
  const { d2, d3 } = rangeMoments(n);
  const c4 = Math.sqrt(2 / (n - 1)) * gammaRatio(n);
  const spreadOfRange = (3 * d3) / d2;
  const spreadOfDeviation = (3 * Math.sqrt(1 - c4 * c4)) / c4;
  const constants = {
    d2,
    d3,
    c4,
    A2: 3 / (d2 * Math.sqrt(n)),
    A3: 3 / (c4 * Math.sqrt(n)),
    D3: Math.max(0, 1 - spreadOfRange),
    D4: 1 + spreadOfRange,
    B3: Math.max(0, 1 - spreadOfDeviation),
    B4: 1 + spreadOfDeviation,
    E2: 3 / d2,
  };
  computed.set(n, constants);
  return constants;
}

/** Step of the inner sum. The integrand falls off like a bell, so equal steps converge at once. */
const step = 0.2;
/** Ranges above 14 deviations have a probability below 1e-20 for 50 values. */
const panels = [0, 2, 4, 6, 8, 11, 14];

function rangeMoments(n: number): { d2: number; d3: number } {
  const nodes = gaussLegendre(16);
  let first = 0;
  let second = 0;
  for (let i = 1; i < panels.length; i += 1) {
    const middle = (panels[i]! + panels[i - 1]!) / 2;
    const half = (panels[i]! - panels[i - 1]!) / 2;
    for (const { node, weight } of nodes) {
      const w = middle + half * node;
      const beyond = half * weight * (1 - rangeProbability(w, n));
      first += beyond;
      second += 2 * w * beyond;
    }
  }
  return { d2: first, d3: Math.sqrt(second - first * first) };
}

/** Probability that n normal values span no more than w; x is the smallest of them. */
function rangeProbability(w: number, n: number): number {
  let sum = 0;
  for (let i = -43; i <= 43; i += 1) {
    const x = i * step;
    sum += normalDensity(x) * (normalProbability(x + w) - normalProbability(x)) ** (n - 1);
  }
  return n * step * sum;
}

/** Γ(n/2)/Γ((n − 1)/2), stepped up from Γ(1)/Γ(1/2) = 1/√π. */
function gammaRatio(n: number): number {
  let ratio = 1 / Math.sqrt(Math.PI);
  for (let size = 2; size < n; size += 1) ratio = (size - 1) / 2 / ratio;
  return ratio;
}
