/** A pivot this small beside its unit column is rounding: the column is a sum of those before it. */
const smallestPivot = 1e-12;

export type HouseholderFactor = {
  /** The coefficients of the columns that come nearest to a right-hand side. */
  readonly solve: (target: readonly number[]) => number[];
  /** Maps a point v to w with w·w = vᵀ(AᵀA)⁻¹v. */
  readonly whiten: (point: readonly number[]) => number[];
  /** Roots of the diagonal of (AᵀA)⁻¹. */
  readonly inverseRowNorms: readonly number[];
};

/**
 * Householder factor: a matrix as a product of reflections and a triangle, ready to solve least squares.
 *
 * Formula: A = Q·R·D, D the lengths of the columns; solve b by R·D·x = Qᵀb
 * Source: G. H. Golub and C. F. Van Loan, Matrix Computations, 3rd edition, algorithm 5.2.1.
 *
 * Callers check that the columns are finite, of one length and no more than that length.
 *
 * @returns the factor, or 'dependent' when a column is constant zero or a sum of others
 * @example
 * householderFactor([[3, 4]]).solve([6, 8]) // => [2]
 */
export function householderFactor(columns: readonly (readonly number[])[]): HouseholderFactor | 'dependent' {
  const p = columns.length;
  const n = columns[0]?.length ?? 0;
  const lengths = columns.map((column) => lengthOf(column, 0));
  const work = columns.map((column, j) => column.map((value) => value / lengths[j]!));
  const diagonal: number[] = [];
  for (let k = 0; k < p; k += 1) {
    const pivotColumn = work[k]!;
    const length = lengthOf(pivotColumn, k);
    // Written so that the NaN of an all-zero column fails it too.
    if (!(length > smallestPivot)) return 'dependent';
    const pivot = pivotColumn[k]! > 0 ? -length : length;
    pivotColumn[k]! -= pivot;
    diagonal.push(pivot);
    for (let j = k + 1; j < p; j += 1) reflect(pivotColumn, work[j]!, k);
  }

  /** Solves R·x = target. */
  const backward = (target: readonly number[]) => {
    const x = new Array<number>(p).fill(0);
    for (let k = p - 1; k >= 0; k -= 1) {
      let rest = target[k]!;
      for (let j = k + 1; j < p; j += 1) rest -= work[j]![k]! * x[j]!;
      x[k] = rest / diagonal[k]!;
    }
    return x;
  };
  const solve = (target: readonly number[]) => {
    const turned = [...target];
    for (let k = 0; k < p; k += 1) reflect(work[k]!, turned, k);
    return backward(turned).map((value, j) => value / lengths[j]!);
  };
  const whiten = (point: readonly number[]) => {
    const w: number[] = [];
    for (let k = 0; k < p; k += 1) {
      let rest = point[k]! / lengths[k]!;
      for (let j = 0; j < k; j += 1) rest -= work[k]![j]! * w[j]!;
      w.push(rest / diagonal[k]!);
    }
    return w;
  };
  const unit = (k: number) => Array.from({ length: Math.max(n, p) }, (_, i) => (i === k ? 1 : 0));
  const inverseColumns = columns.map((_, k) => backward(unit(k)));
  const inverseRowNorms = columns.map(
    (_, j) =>
      lengthOf(
        inverseColumns.map((column) => column[j]!),
        0,
      ) / lengths[j]!,
  );
  return { solve, whiten, inverseRowNorms };
}

/** Length of the part of a vector from `start` on, scaled so that no square leaves the range of a double. */
function lengthOf(values: readonly number[], start: number): number {
  let largest = 0;
  for (let i = start; i < values.length; i += 1) largest = Math.max(largest, Math.abs(values[i]!));
  if (largest === 0) return 0;
  let square = 0;
  for (let i = start; i < values.length; i += 1) square += (values[i]! / largest) ** 2;
  return largest * Math.sqrt(square);
}

/** Reflects `target` in the plane whose normal is the tail of `normal` from k on. */
function reflect(normal: readonly number[], target: number[], k: number): void {
  let product = 0;
  let square = 0;
  for (let i = k; i < target.length; i += 1) {
    product += normal[i]! * target[i]!;
    square += normal[i]! * normal[i]!;
  }
  const share = (2 * product) / square;
  for (let i = k; i < target.length; i += 1) target[i]! -= share * normal[i]!;
}
