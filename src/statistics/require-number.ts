/**
 * Requirement on one number: finite, and within the stated rule.
 *
 * @throws {RangeError} "functionName requires rule"
 */
export function requireNumber(functionName: string, rule: string, value: number, holds: boolean): void {
  if (!Number.isFinite(value) || !holds) throw new RangeError(`${functionName} requires ${rule}`);
}
