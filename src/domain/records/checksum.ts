/** Reversed polynomial of CRC-32 as in ISO 3309 and ITU-T V.42. */
const POLYNOMIAL = 0xedb88320;

const table = Uint32Array.from({ length: 256 }, (_, byte) => {
  let rest = byte;
  for (let bit = 0; bit < 8; bit += 1) rest = rest & 1 ? (rest >>> 1) ^ POLYNOMIAL : rest >>> 1;
  return rest;
});

/**
 * CRC-32 of a text in UTF-8, going on from an earlier one so that checksums chain.
 *
 * It finds damage, not deceit: whoever can write the text can write its checksum.
 *
 * @example
 * checksum('123456789') // => 3421780262
 */
export function checksum(text: string, before = 0): number {
  let rest = ~before;
  for (let at = 0; at < text.length; at += 1) {
    const code = text.charCodeAt(at);
    if (code < 0x80) {
      rest = withByte(rest, code);
      continue;
    }
    const point = text.codePointAt(at)!;
    if (point > 0xffff) at += 1;
    rest = withPoint(rest, point);
  }
  return ~rest >>> 0;
}

function withByte(rest: number, byte: number): number {
  return (rest >>> 8) ^ table[(rest ^ byte) & 0xff]!;
}

/** A character beyond ASCII as its bytes in UTF-8; a lone surrogate as U+FFFD, as TextEncoder has it. */
function withPoint(rest: number, point: number): number {
  const code = point >= 0xd800 && point <= 0xdfff ? 0xfffd : point;
  const last = 0x80 | (code & 63);
  if (code < 0x800) return withByte(withByte(rest, 0xc0 | (code >> 6)), last);
  const second = 0x80 | ((code >> 6) & 63);
  if (code < 0x10000) return withByte(withByte(withByte(rest, 0xe0 | (code >> 12)), second), last);
  const first = withByte(withByte(rest, 0xf0 | (code >> 18)), 0x80 | ((code >> 12) & 63));
  return withByte(withByte(first, second), last);
}
