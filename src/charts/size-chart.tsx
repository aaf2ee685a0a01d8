import { ChartFrame } from './chart-frame';
import { linearScale } from './linear-scale';
import { roundTicks } from './round-ticks';

interface Props {
  readonly id: string;
  readonly title: string;
  readonly description: string;
  readonly width: number;
  readonly points: readonly { readonly x: number; readonly y: number }[];
  /** The fitted line from end to end of the sizes studied. */
  readonly line: readonly { readonly x: number; readonly y: number }[];
  readonly xTitle: string;
  readonly xText: (value: number) => string;
  readonly yText: (value: number) => string;
}

const HEIGHT = 300;
const LEFT = 70;
const FOOT = 48;
const EDGE = 30;

/** Readings against size, with the fitted line through them. It draws the numbers it is given. */
export function SizeChart(props: Props) {
  const { id, title, description, width, points, line, xTitle, xText, yText } = props;
  const xs = points.map(({ x }) => x);
  const yTicks = roundTicks(0, Math.max(...points.map(({ y }) => y)), 5);
  const low = Math.min(...xs);
  const high = Math.max(...xs);
  if (!(low < high)) return null;
  const x = linearScale({ low, high, start: LEFT + EDGE, end: width - EDGE });
  const y = linearScale({ low: 0, high: yTicks.at(-1)!, start: HEIGHT - FOOT, end: EDGE });
  return (
    <ChartFrame id={id} title={title} description={description} width={width} height={HEIGHT}>
      {yTicks.map((tick) => (
        <g key={tick}>
          <line x1={LEFT} x2={width - 4} y1={y(tick)} y2={y(tick)} stroke="var(--rule)" />
          <text x={LEFT - 8} y={y(tick) + 5} font-size="14" text-anchor="end" fill="var(--quiet)">
            {yText(tick)}
          </text>
        </g>
      ))}
      {[...new Set(xs)].map((size) => (
        <text key={size} x={x(size)} y={HEIGHT - 26} font-size="14" text-anchor="middle" fill="var(--quiet)">
          {xText(size)}
        </text>
      ))}
      <text x={width - EDGE} y={HEIGHT - 6} font-size="14" text-anchor="end" fill="var(--ink)">
        {xTitle}
      </text>
      <polyline
        points={line.map((point) => `${x(point.x)},${y(point.y)}`).join(' ')}
        fill="none"
        stroke="var(--ink)"
        stroke-width="2"
      />
      {points.map((point, place) => (
        <circle
          key={place}
          cx={x(point.x)}
          cy={y(point.y)}
          r="4"
          fill="none"
          stroke="var(--ink)"
          stroke-width="1.5"
        />
      ))}
    </ChartFrame>
  );
}
