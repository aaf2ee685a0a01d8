/**
 * Compensated sum (Neumaier): adds numbers and carries along what each addition rounded away.
 *
 * Source: Neumaier, ZAMM 54 (1974), pp. 39–51, "improved Kahan–Babuška algorithm".
 * Symbols: values and answer in the same unit.
 *
 * Callers check their input; a sum that leaves the range of a double comes back as it is.
 *
 * @example
 * compensatedSum([1, 1e16, 1, -1e16]) // => 2
 */
export function compensatedSum(values: readonly number[]): number {
  let sum = 0;
  let lost = 0;
  const n = values.length;
  for (let i = 0; i < n; i += 1) {
    const value = values[i]!;
    const next = sum + value;
    // Knuth's two-sum: exact for either order of size, and without a branch to mispredict.
    const part = next - sum;
    lost += sum - (next - part) + (value - part);
    sum = next;
  }
  return sum + lost;
}
