/** A short random name, long enough that two tablets of one shop never share it (32 bits). */
export function randomName(prefix: string): string {
  const [value] = crypto.getRandomValues(new Uint32Array(1));
  return `${prefix}-${(value ?? 0).toString(36)}`;
}
