import type { Scale } from './linear-scale';

/** Limits of a stretch of a run, in the unit of its points. */
export interface RunLimits {
  /** The places of its first and its last point, from 0. */
  readonly from: number;
  readonly to: number;
  readonly lower: number;
  readonly upper: number;
  readonly lowerText: string;
  readonly upperText: string;
}

interface Props {
  readonly limits: readonly RunLimits[];
  /** Pixels halfway between the point before a place and the point at it. */
  readonly between: Scale;
  readonly left: number;
  readonly right: number;
  /** The place of the last point. */
  readonly last: number;
  readonly y: Scale;
}

/** Level lines in dashes, each over its own stretch. */
export function RunChartLimits({ limits, between, left, right, last, y }: Props) {
  return (
    <g stroke="var(--quiet)" stroke-width={1.5} stroke-dasharray="3 5">
      {limits.flatMap(({ from, to, lower, upper }) =>
        [lower, upper].map((value) => (
          <line
            key={`${from} ${value}`}
            x1={from === 0 ? left : between(from)}
            x2={to === last ? right : between(to + 1)}
            y1={y(value)}
            y2={y(value)}
          />
        )),
      )}
    </g>
  );
}

/** The words at the end of the newest limits, and where they belong. */
export function limitLines(newest: RunLimits | undefined): { value: number; text: string }[] {
  if (!newest) return [];
  return [
    { value: newest.upper, text: newest.upperText },
    { value: newest.lower, text: newest.lowerText },
  ];
}
