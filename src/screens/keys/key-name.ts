/** What stands on a key, from the name that the browser gives to its place: `KeyB` is B, `Digit1` is 1. */
export function keyName(code: string): string {
  return code.replace(/^(?:Key|Digit)(?=.$)/, '');
}
