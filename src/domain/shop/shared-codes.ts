import { isSameCode } from './known-code';
import type { Part } from './shop';

/** Parts in use whose code another one in use has too, as after a copy of another tablet was taken in. */
export function sharedCodes(parts: readonly Part[]): Part[] {
  const inUse = parts.filter(({ retired }) => !retired);
  return inUse.filter((part) => inUse.some(({ id, code }) => id !== part.id && isSameCode(code, part.code)));
}
