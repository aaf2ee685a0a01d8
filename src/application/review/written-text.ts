/** A text that somebody typed, without blanks around it. */
export function writtenText(verb: string, what: string, typed: string): string {
  const text = typed.trim();
  if (text === '') throw new RangeError(`${verb} requires ${what}`);
  return text;
}
