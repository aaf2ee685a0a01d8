import type { Stamp } from './stamp';

/** The moment so many milliseconds after another, on both clocks. */
export function later(stamp: Stamp, byMs: number): Stamp {
  return { ...stamp, monoMs: stamp.monoMs + byMs, wallMs: stamp.wallMs + byMs };
}
