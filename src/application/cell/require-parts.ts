/** @throws {RangeError} "name requires whole parts from 1 to 100000" */
export function requireParts(name: string, parts: number): void {
  if (!(Number.isInteger(parts) && parts >= 1 && parts <= 100_000)) {
    throw new RangeError(`${name} requires whole parts from 1 to 100000`);
  }
}
