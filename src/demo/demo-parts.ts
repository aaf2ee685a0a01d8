import type { PartSize } from '../domain/records/standard-fact';

/** A wardrobe door of the invented shop, with what drives its times. */
export interface DemoPart {
  readonly code: DemoCode;
  readonly name: string;
  /** Metres of edge banding to clean up. */
  readonly perimeter: number;
  /** Hinge cups to bore. */
  readonly hinges: number;
  /** Fraction of the full feed: veneer splinters at more. */
  readonly feed: number;
  /** Standard time, milliseconds: 14 % on normal time, 4 % on machine time. */
  readonly targetMs: number;
}

export type DemoCode = 'S' | 'M' | 'L' | 'T' | 'V';

/** In the order in which the mix draws them. */
export const demoParts: Readonly<Record<DemoCode, DemoPart>> = {
  S: { code: 'S', name: 'WD-0716 small', perimeter: 2.324, hinges: 2, feed: 1, targetMs: 80_220 },
  M: { code: 'M', name: 'WD-1310 medium', perimeter: 3.512, hinges: 3, feed: 1, targetMs: 90_804 },
  L: { code: 'L', name: 'WD-1960 long', perimeter: 4.812, hinges: 4, feed: 1, targetMs: 102_192 },
  T: { code: 'T', name: 'WD-2230 tall', perimeter: 5.652, hinges: 5, feed: 1, targetMs: 110_274 },
  V: {
    code: 'V',
    name: 'WD-2230V tall, veneered',
    perimeter: 5.652,
    hinges: 5,
    feed: 0.7,
    targetMs: 129_462,
  },
};

export const demoCodes = Object.keys(demoParts) as DemoCode[];

/** What edge cleaning and boring grow with. */
export function partSizes(code: DemoCode): PartSize[] {
  const { perimeter, hinges } = demoParts[code];
  return [
    { driver: 'perimeter, m', value: perimeter },
    { driver: 'hinges', value: hinges },
  ];
}
