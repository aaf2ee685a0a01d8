import { linearScale } from './linear-scale';

/** A part as a point: its time, or its time against its target. */
export interface RecentPart {
  readonly value: number;
  /** In means and positions; a part that is not is drawn hollow. */
  readonly isCounted: boolean;
}

interface Props {
  readonly width: number;
  readonly height: number;
  /** In order of time; any one unit. */
  readonly parts: readonly RecentPart[];
  /** Drawn through, dashed; null for none. */
  readonly target: number | null;
}

const EDGE = 8;
const DOT = 4.5;
/** Of the middle of the picture: what goes further is drawn at the edge, as a triangle. */
const REACH = 0.6;

/** The last parts in their order, small and without figures: what it shows stands beside it in words. */
export function RecentParts({ width, height, parts, target }: Props) {
  const values = parts.map(({ value }) => value).sort((a, b) => a - b);
  const middle = target ?? values[Math.floor(values.length / 2)] ?? 0;
  if (middle <= 0) return null;
  const [low, high] = [middle * (1 - REACH), middle * (1 + REACH)];
  const x = linearScale({ low: 0, high: Math.max(1, parts.length - 1), start: EDGE, end: width - EDGE });
  const y = linearScale({ low, high, start: height - EDGE, end: EDGE });
  const at = (value: number) => y(Math.min(high, Math.max(low, value)));
  return (
    <svg width={width} height={height} viewBox={`0 0 ${width} ${height}`} aria-hidden="true">
      {target !== null && (
        <line
          x1={0}
          x2={width}
          y1={y(target)}
          y2={y(target)}
          stroke="var(--rule-strong)"
          stroke-width="2"
          stroke-dasharray="7 5"
        />
      )}
      <polyline
        points={parts.map(({ value }, place) => `${x(place)},${at(value)}`).join(' ')}
        fill="none"
        stroke="var(--ink)"
        stroke-width="1.5"
      />
      {parts.map(({ value, isCounted }, place) =>
        value > high ? (
          <path key={place} d={`M${x(place) - 6} ${EDGE + 5} h12 l-6 -11 z`} fill="var(--ink)" />
        ) : (
          <circle
            key={place}
            cx={x(place)}
            cy={at(value)}
            r={DOT}
            fill={isCounted ? 'var(--ink)' : 'var(--paper)'}
            stroke="var(--ink)"
            stroke-width="1.5"
          />
        ),
      )}
    </svg>
  );
}
