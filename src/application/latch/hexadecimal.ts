/**
 * Bytes as text, two digits each.
 *
 * @example
 * hexadecimal(new Uint8Array([0, 255])) // => '00ff'
 */
export function hexadecimal(bytes: Uint8Array): string {
  return Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('');
}

/** The bytes of such a text. */
export function bytesOf(text: string): Uint8Array<ArrayBuffer> {
  return Uint8Array.from(text.match(/../g) ?? [], (digits) => Number.parseInt(digits, 16));
}
