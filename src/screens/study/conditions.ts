/** One condition, such as feed: 70 %. */
export interface Condition {
  readonly name: string;
  readonly value: string;
}

/**
 * Conditions as one text, `feed: 70 %; passes: 2`; what has no name stands alone, and a name that nothing was said to
 * yet keeps its colon.
 */
export function conditionsText(conditions: readonly Condition[]): string {
  return conditions
    .map(({ name, value }) => ({ name: name.trim(), value: value.trim() }))
    .filter(({ name, value }) => name + value !== '')
    .map(({ name, value }) => (name === '' ? value : value === '' ? `${name}:` : `${name}: ${value}`))
    .join('; ');
}

/** The conditions of a text, whoever wrote it. */
export function conditionsOf(text: string): Condition[] {
  return text
    .split(';')
    .map((one) => one.trim())
    .filter((one) => one !== '')
    .map((one) => {
      const [name, ...rest] = one.split(':');
      return rest.length === 0
        ? { name: '', value: one }
        : { name: name!.trim(), value: rest.join(':').trim() };
    });
}
