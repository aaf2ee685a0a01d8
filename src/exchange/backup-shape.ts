/** Says where a value is not what it must be, such as `.rows.3.cycle`; null when it is. */
export type Shape = (value: unknown) => string | null;

/** A shape for each property: one that the type gains is asked for here, or the code does not compile. */
export type Fields<Type> = { readonly [Name in keyof Type]-?: Shape };

const HERE = '';

export const text: Shape = (value) => (typeof value === 'string' ? null : HERE);
export const filledText: Shape = (value) => (typeof value === 'string' && value !== '' ? null : HERE);
export const truth: Shape = (value) => (typeof value === 'boolean' ? null : HERE);
export const number = numberThat(() => true);
export const notNegative = numberThat((value) => value >= 0);
export const positive = numberThat((value) => value > 0);
export const count = numberThat((value) => Number.isSafeInteger(value) && value >= 1);

/** A finite number (JSON can say 1e999) for which something holds. */
export function numberThat(holds: (value: number) => boolean): Shape {
  return (value) => (Number.isFinite(value) && holds(value as number) ? null : HERE);
}

export function oneOf(...allowed: readonly unknown[]): Shape {
  return (value) => (allowed.includes(value) ? null : HERE);
}

export function orNull(shape: Shape): Shape {
  return (value) => (value === null ? null : shape(value));
}

/** A property that may be left out. */
export function optional(shape: Shape): Shape {
  return (value) => (value === undefined ? null : shape(value));
}

export function listOf(item: Shape): Shape {
  return (value) => {
    if (!Array.isArray(value)) return HERE;
    for (const [place, each] of value.entries()) {
      const where = item(each);
      if (where !== null) return `.${place}${where}`;
    }
    return null;
  };
}

/** Texts under names of somebody's choosing. `__proto__` is never one: it would be no name but an order. */
export const namedTexts: Shape = (value) => {
  if (!isObject(value)) return HERE;
  for (const [name, each] of Object.entries(value)) {
    if (name === '__proto__' || typeof each !== 'string') return `.${name}`;
  }
  return null;
};

/**
 * Exactly these properties. What this release does not know it refuses: it would be kept unread, and nobody
 * could say what it means.
 */
export function exactly<Type>(fields: Fields<Type>): Shape {
  const shapes = Object.entries(fields) as [string, Shape][];
  return (value) => {
    if (!isObject(value)) return HERE;
    for (const [name, shape] of shapes) {
      const where = shape(Object.hasOwn(value, name) ? value[name] : undefined);
      if (where !== null) return `.${name}${where}`;
    }
    const stranger = Object.keys(value).find((name) => !Object.hasOwn(fields, name));
    return stranger === undefined ? null : `.${stranger}`;
  };
}

export function isObject(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
